/** The look of what is printed for a client: one page, A4 or US letter, legible in black and white. */
export const sheetStyle = `
@page { margin: 13mm 15mm; }
.sheet, .sheet * { box-sizing: border-box; }
.sheet {
  background: #fff; color: #111; font-family: Handbook, "Source Serif 4", Charter, Georgia, serif;
  font-size: 15px; line-height: 1.32; font-variant-numeric: lining-nums tabular-nums;
  margin: 0 auto; max-width: 100%; overflow-wrap: anywhere; width: 680px;
}
.sheet .page { border: 0; break-after: page; display: flex; flex-direction: column; height: 945px; overflow: hidden; padding: 0; }
.sheet .page:last-child { break-after: auto; }
.sheet .page > * { flex: none; }
.sheet .page > .foot { margin-top: auto; }
.sheet h1, .sheet h2, .sheet h3, .sheet p, .sheet dl, .sheet dd, .sheet ul, .sheet ol { margin: 0; padding: 0; }
.sheet h1, .sheet h2 { font-weight: 700; line-height: inherit; }
.sheet .top { align-items: baseline; border-bottom: 3px double #111; display: flex; gap: 16px; justify-content: space-between; padding-bottom: 4px; }
.sheet .top h1 { font-size: 17px; font-weight: 700; max-height: 2.64em; overflow: hidden; }
.sheet .top p { flex: none; font-size: 12px; }
.sheet .who { display: flex; font-size: 12px; gap: 24px; margin-top: 6px; }
.sheet .who span { max-height: 2.64em; overflow: hidden; }
.sheet .invented { font-style: italic; }
.sheet .use { font-size: 14px; font-style: italic; margin-top: 4px; }
.sheet .use.is-long { -webkit-box-orient: vertical; -webkit-line-clamp: 2; display: -webkit-box; overflow: hidden; }
.sheet .verdict { font-size: 28px; font-weight: 700; line-height: 1.15; margin-top: 6px; max-height: 2.3em; overflow: hidden; }
.sheet .say { font-size: 15px; margin-top: 2px; }
.sheet .picture { margin-top: 4px; }
.sheet .picture svg { display: block; height: auto; width: 100%; }
.sheet .caption, .sheet .remark { font-size: 11.5px; color: #333; }
.sheet table { border-collapse: collapse; font-size: 12px; line-height: inherit; margin-top: 5px; width: 100%; }
.sheet thead th { border: 0; border-bottom: 1px solid #111; font-weight: 700; padding: 3px 6px 3px 0; vertical-align: bottom; }
.sheet tbody > tr > * { border: 0; border-bottom: 1px solid #bbb; font-weight: 400; max-width: none; overflow-wrap: anywhere; padding: 2px 6px 2px 0; vertical-align: middle; }
.sheet .is-text { text-align: left; }
.sheet .packs tbody > tr > * { max-width: 9em; overflow: hidden; text-overflow: ellipsis; white-space: nowrap; }
.sheet tr > .is-number { text-align: right; padding-right: 14px; white-space: normal; }
.sheet .is-tight { font-size: 11.25px; }
.sheet .is-tight tbody > tr > * { padding-bottom: 1px; padding-top: 1px; }
.sheet .is-tight tr > .is-number { padding-right: 6px; }
.sheet .is-tight thead th { overflow-wrap: normal; padding-right: 6px; }
.sheet .packs tbody > tr > .is-text:last-child { line-height: 1; overflow: visible; padding-right: 0; white-space: normal; }
.sheet tr.is-chosen > * { border-bottom: 2px solid #111; border-top: 2px solid #111; font-weight: 700; }
.sheet .columns { display: grid; font-size: 11.5px; gap: 0 24px; grid-template-columns: 1fr 1fr; line-height: 1.25; margin-top: 4px; }
.sheet .columns h2 { border-top: 1px solid #111; font-size: 13px; margin-top: 4px; padding-top: 2px; }
.sheet .facts { display: grid; gap: 1px 8px; grid-template-columns: 76px minmax(0, 1fr); }
.sheet .facts dt { font-weight: 700; }
.sheet .sign { display: grid; gap: 28px; grid-template-columns: 1fr 1fr; margin-top: auto; padding-top: 10px; }
.sheet .sign p { border-top: 1px solid #111; font-size: 12px; padding-top: 2px; }
.sheet .foot { border-top: 3px double #111; font-size: 11.5px; padding-top: 4px; }
.sheet .boxes { table-layout: fixed; }
.sheet .boxes td, .sheet .boxes th { height: 26px; }
.sheet .is-card tbody :is(td, th) { height: 58px; }
.sheet .is-card tbody td { border-left: 1px solid #bbb; }
.sheet .is-card thead th:first-child { width: 34%; }
.sheet ol.steps { margin: 4px 0 0 20px; }
.sheet ol.steps li { margin-top: 3px; }
.sheet h2.part { font-size: 15px; margin-top: 12px; }
.sheet h2.part + dl.facts { gap: 4px 8px; grid-template-columns: 92px minmax(0, 1fr); margin-top: 4px; }
.sheet .page.is-flowing { height: auto; min-height: 935px; overflow: visible; }
.sheet .cautions { font-size: 11px; line-height: 1.2; margin: 2px 0 0 16px; }
.sheet .settings { font-size: 10.5px; line-height: 1.17; table-layout: fixed; }
.sheet .settings thead { display: table-header-group; }
.sheet .settings th:first-child { width: 20%; }
.sheet .settings thead th:nth-child(2) { width: 52%; }
.sheet .settings thead th:nth-child(3) { width: 12%; }
.sheet .settings tr { break-inside: avoid; }
.sheet .settings tbody > tr > * { padding: 1px 5px 1px 0; vertical-align: top; }
.sheet .settings .is-group > * { border-bottom: 1px solid #111; font-size: 12px; font-weight: 700; padding-top: 5px; }
.sheet .settings .is-group { break-after: avoid; }
.sheet .settings tr > .box { border-left: 1px solid #bbb; }
.sheet .settings .from { color: #333; font-style: italic; }
.sheet .settings .beware { display: block; font-weight: 600; }
@media screen { .sheet { box-shadow: 0 0 0 1px #999; padding: 36px 40px; width: 760px; max-width: 100%; } .sheet .page { height: auto; min-height: 945px; overflow: visible; } .sheet .page + .page { border-top: 1px dashed #999; margin-top: 36px; padding-top: 36px; } }
@media screen and (max-width: 760px) { .sheet { padding: 16px; } .sheet .columns, .sheet .sign { grid-template-columns: minmax(0, 1fr); } .sheet table { display: block; overflow-x: auto; } .sheet .boxes { display: table; } }
`;
