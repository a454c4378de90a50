### What the page says by itself, without the engine. Every key begins with "ui-", and no text has a value in it.

ui-start-says = Fit-up shows whether a rear implement goes on a compact tractor, what it takes, and how sure that is.
ui-language-unspoken = The texts could not be loaded. English is shown instead.
ui-engine-restarted = The calculation had stopped. It was begun again with the same build.
ui-engine-here = The calculation runs in the page itself, because the browser gives it no place of its own. The page may pause at times.
ui-engine-missing = The program that calculates could not be loaded.
ui-engine-cut-off = The program that calculates arrived damaged or cut off.
ui-engine-other-version = The program that calculates is of another version than this page. Reload the page.
ui-engine-stopped = The calculation has stopped three times in a row.
ui-engine-kept = What is shown is of before. Your build is kept in this link:
ui-stories = Examples from the demonstration catalogue
ui-story-listed = A set from the maker’s list: it bolts up.
ui-story-measured = A used arm without papers: measured with a caliper, and settled.
ui-story-two-holes = A seat deck that needs two holes drilled.
ui-update = A new version of Fit-up is ready. Your build is kept.
ui-update-take = Load it
ui-copy-kept = The network does not answer. The catalogue is the copy kept on this device:
ui-idle = Are you still there?
ui-idle-says = In a moment everything starts afresh for the next visitor.
ui-idle-stay = Go on
