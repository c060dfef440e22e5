/**
 * `draw`, giving the last of its drawings again while it is asked for the very same things: a figure of a long log need not
 * be drawn anew because something beside it has changed.
 */
export function keepDrawn<Asked extends readonly unknown[], Drawn>(
  draw: (...asked: Asked) => Drawn,
): (...asked: Asked) => Drawn {
  let last: { readonly asked: Asked; readonly drawn: Drawn } | undefined;
  return (...asked) => {
    const before = last;
    if (before && asked.length === before.asked.length && asked.every((each, i) => Object.is(each, before.asked[i])))
      return before.drawn;
    const drawn = draw(...asked);
    last = { asked, drawn };
    return drawn;
  };
}
