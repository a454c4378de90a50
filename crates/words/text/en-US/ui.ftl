### What is written otherwise in the United States.

ui-loading-catalogue = Loading the catalog
ui-catalogue-slow = The catalog is taking long to load.
ui-catalogue-missing = The catalog could not be loaded.
ui-catalogue-broken = The catalog has mistakes and cannot be used yet.
ui-not-in-catalogue = { $id } is not in this catalog
ui-remedies-none = No adapter, seat, frame or work in this catalog helps.
ui-remedies-not-all-tried = Nothing was found that helps; not everything in this catalog was tried.
ui-link-missing = Some items of the link are not in this catalog and were left out. The others are loaded.
ui-catalogue-no-address = No catalog is named. Give the element a catalogue attribute.
ui-catalogue-newer = The catalog is of a newer format than this version reads. Reload the page to get the new version.
ui-catalogue-kept = The catalog that was there before stays in use.
ui-nose-load = Tongue weight
ui-front-share-of-unladen = Front axle, of empty weight
