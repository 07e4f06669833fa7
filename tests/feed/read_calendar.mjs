// Reads a calendar from standard input with ical.js and prints what it understood.
import ICAL from '../support/node/node_modules/ical.js/dist/ical.js';
import { readFileSync } from 'node:fs';

const calendar = new ICAL.Component(ICAL.parse(readFileSync(0, 'utf8')));
console.log(
  JSON.stringify(
    calendar.getAllSubcomponents('vevent').map((each) => {
      const event = new ICAL.Event(each);
      return {
        uid: event.uid,
        starts: event.startDate.toUnixTime() * 1000,
        summary: event.summary,
        description: event.description,
        status: each.getFirstPropertyValue('status'),
      };
    }),
  ),
);
