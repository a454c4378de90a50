// The language that the reader most likely wants. The start page asks before it paints, so that its first screen is in it.
globalThis.fitUpLanguage = (() => {
  const languages = ["en", "en-US", "de", "es", "fr"];
  const element = document.querySelector("fit-up");
  const kept = () => {
    // The language chosen at an earlier visit, where the page may store anything.
    try {
      return new URLSearchParams(localStorage.getItem(`fit-up/${element?.id || "fit-up"}`) ?? "").get("lang");
    } catch {
      return null;
    }
  };
  const wishes = [kept(), element?.lang, ...navigator.languages]
    .map((tag) => languages.find((known) => known.toLowerCase() === tag?.toLowerCase()) ?? tag?.slice(0, 2));
  return wishes.find((tag) => languages.includes(tag)) ?? languages[0];
})();
if (document.currentScript) document.documentElement.lang = globalThis.fitUpLanguage;
