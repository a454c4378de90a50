//! Answers drawn to scale.
