### The table of every machine with every implement, on paper and on a page of its own.

matrix-title = What fits what
matrix-edition = Edition { $edition }
matrix-lead = For each machine with each implement: the best answer that any mounting frame and any seat give, and why it is no better.
matrix-legend = What the answers mean
matrix-with = with { $frame }, { $seat }
matrix-nearest = nearest: { $frame }, { $seat }
matrix-none = The catalogue has no seat to complete a build.
matrix-progress = { $done } of { $machines } machines done, about { $seconds } s left

coverage-answers = Machines with implements: { $count }; of these at best “check first”: { $open }. What holds them back, and how many each:
coverage-sets = Listed sets that are not simply in order: { $count }
coverage-lists = Headings of parts lists that are the name of no port of their item, so that they prove no joint: { $count }
diff-rows = Rows that differ: { $count }
diff-added = added
diff-removed = removed
diff-changed = changed: { $fields }
diff-answers = Machines with implements whose best answer differs: { $count }
