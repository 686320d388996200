// @ts-check
/** Minutes and seconds. @param {number} seconds */
export function clock(seconds) {
  const s = Math.floor(seconds);
  return Math.floor(s / 60) + ':' + String(s % 60).padStart(2, '0');
}
