### What is written otherwise in the United States.

matrix-none = The catalog has no seat to complete a build.
