// Days and times as this phone writes them. A formatter is kept, because making one takes longer than its use.

/** @param {Intl.DateTimeFormatOptions} options @returns {(when: number | string) => string} of ms, an ISO day or an ISO instant */
function writer(options) {
  /** @type {Intl.DateTimeFormat | undefined} */
  let format;
  let zone_min = 0; // of the formatter: the phone may travel while the app is open
  return (when) => {
    const date = new Date(typeof when === 'string' && when.length === 10 ? `${when}T12:00:00` : when);
    if (Number.isNaN(date.getTime())) return String(when);
    const here_min = new Date().getTimezoneOffset();
    if (!format || zone_min !== here_min) format = new Intl.DateTimeFormat([], options);
    zone_min = here_min;
    return format.format(date);
  };
}

export const timeOfDay = writer({ hour: '2-digit', minute: '2-digit' });
/** The day with its year. */
export const fullDay = writer({ dateStyle: 'medium' });
/** The day with its year, and the time. */
export const moment = writer({ dateStyle: 'medium', timeStyle: 'short' });
export const shortDay = writer({ day: 'numeric', month: 'short' });
/** The day with its weekday. */
export const weekDay = writer({ weekday: 'short', day: 'numeric', month: 'short' });
