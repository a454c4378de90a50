### What is written otherwise in the United States.

caution-planning-aid = Fit-up is a planning aid. The maker’s manuals, the rated loads, local law and the judgment of a qualified workshop come first.
shape-rear-tyre = rear tire
shape-front-tyre = front tire
