// Keeps what goes wrong on the page, over reloads too: thrown, rejected, written to the console as an error, refused or not loaded.
{
  const keep = (fault) => {
    const before = JSON.parse(sessionStorage.getItem("faults") ?? "[]");
    sessionStorage.setItem("faults", JSON.stringify([...before, String(fault)]));
  };
  addEventListener("error", ({ message, target }) => keep(message ?? `not loaded: ${target.src ?? target.href}`), true);
  addEventListener("unhandledrejection", ({ reason }) => keep(reason));
  addEventListener("securitypolicyviolation", ({ violatedDirective, blockedURI }) =>
    keep(`refused by ${violatedDirective}: ${blockedURI}`),
  );
  const { error } = console;
  console.error = (...words) => {
    keep(words.join(" "));
    error.apply(console, words);
  };
}
