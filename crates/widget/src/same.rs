//! Values that are equal only to themselves, so that views can be told apart without looking in.

use std::ops::Deref;
use std::rc::Rc;

/// A shared value; equal to its own copies and to nothing else.
#[derive(Debug)]
pub struct Same<T: ?Sized>(Rc<T>);

impl<T> Same<T> {
    /// Shares a value.
    pub fn new(value: T) -> Self {
        Self(Rc::new(value))
    }
}

impl<T> From<Rc<T>> for Same<T> {
    fn from(shared: Rc<T>) -> Self {
        Self(shared)
    }
}

impl<T: ?Sized> Clone for Same<T> {
    fn clone(&self) -> Self {
        Self(Rc::clone(&self.0))
    }
}

impl<T: ?Sized> PartialEq for Same<T> {
    fn eq(&self, other: &Self) -> bool {
        Rc::ptr_eq(&self.0, &other.0)
    }
}

impl<T: ?Sized> Deref for Same<T> {
    type Target = T;

    fn deref(&self) -> &T {
        &self.0
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_copy_is_the_same_and_an_equal_value_is_not() {
        let one = Same::new(7);
        assert_eq!(one, one.clone());
        assert_ne!(one, Same::new(7));
    }
}
