### What the page says by itself, as the Americans write it.

ui-stories = Examples from the demonstration catalog
ui-copy-kept = The network does not answer. The catalog is the copy kept on this device:
