### What is written otherwise in the United States.

ui-catalogue = Catalog
