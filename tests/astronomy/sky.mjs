// Prints, from an astronomical library, the equinoxes and solstices of a hundred years, and day lengths on the meridian of Greenwich.
import { Body, Observer, SearchRiseSet, Seasons } from 'astronomy-engine';

const [first, last] = [1951, 2050];
const out = [];
for (let year = first; year <= last; year++) {
  const seasons = Seasons(year);
  out.push(`turns ${year} ${[seasons.mar_equinox, seasons.jun_solstice, seasons.sep_equinox, seasons.dec_solstice].map((time) => time.date.toISOString()).join(' ')}`);
}

// A sunrise is looked for from midnight on, and then the sunset behind it. No day is printed on which there is none of the one or the other.
for (let latitude = -66; latitude <= 66; latitude += 6) {
  const place = new Observer(latitude, 0, 0);
  for (let year = first; year <= last; year += 9) {
    for (let day = 0; day < 365; day += 11) {
      const midnight = new Date(Date.UTC(year, 0, 1 + day));
      const rise = SearchRiseSet(Body.Sun, place, +1, midnight, 1);
      const set = rise && SearchRiseSet(Body.Sun, place, -1, rise, 1);
      if (set) {
        out.push(`day ${latitude} ${midnight.toISOString().slice(0, 10)} ${(set.date - rise.date) / 3600000}`);
      }
    }
  }
}

console.log(out.join('\n'));
