// Nudges on this phone, wherever they are offered: all that can be done about them needs the server.
import { lazy } from '../components/lazy.js';

export const Nudges = lazy(() => import('./nudges-card.js'), 'Nudges', 'online');
