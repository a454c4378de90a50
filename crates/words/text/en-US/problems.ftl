### What is written otherwise in the United States.

problem-too-large =
    .mend = Split the catalog into several.
problem-too-many-values =
    .mend = Split the catalog into several.
problem-too-deep =
    .mend = A catalog needs no such nesting: compare with the format’s description.
problem-centre-of-gravity-outside = The center of gravity ({ $x }, { $y }) lies outside the outline in the { $view ->
    [side] side
   *[plan] plan
} view.
    .mend = Correct the center of gravity, or draw what is missing of the outline.
