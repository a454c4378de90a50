### The table of every machine with every implement, on paper and on a page of its own.

matrix-title = What fits what
matrix-edition = Edition { $edition }
matrix-lead = For each machine with each implement: the best answer that any mounting frame and any seat give, and why it is no better.
matrix-legend = What the answers mean
matrix-with = with { $frame }, { $seat }
matrix-nearest = nearest: { $frame }, { $seat }
matrix-none = The catalogue has no seat to complete a build.
matrix-progress = { $done } of { $machines } machines done, about { $seconds } s left
