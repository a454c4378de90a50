// Listens to the widget as a dealer's page would.
const told = document.querySelector("#told");
for (const name of ["fitup-change", "fitup-share", "fitup-error"]) {
  document.addEventListener(name, (event) => {
    told.textContent = `${name}\n${JSON.stringify(event.detail, null, 2)}`;
  });
}
