/** The date in the file, where the one who builds it has set one. */
export function created(): { created?: Date } {
  const seconds = process.env.SOURCE_DATE_EPOCH;
  return seconds !== undefined && /^\d{1,11}$/.test(seconds) ? { created: new Date(Number(seconds) * 1000) } : {};
}
