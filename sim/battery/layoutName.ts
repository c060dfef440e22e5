/** A layout as the trade writes it: 5s3p. */
export function layoutName(seriesModules: number, parallelModules: number): string {
  return `${seriesModules}s${parallelModules}p`;
}
