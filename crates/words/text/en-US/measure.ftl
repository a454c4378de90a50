### What is written otherwise in the United States.

identify-none = Nothing in this catalog states what was observed.
misread-metric-fraction = “{ $typed }” is a fraction, and millimeters have none. If it is in inches, write so: 2 1/32 in.
