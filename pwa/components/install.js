// How to put the app on the home screen, by platform.
import { offer, platform } from '../signals/home-screen.js';
import { welcomeText } from '../text/en/welcome.js';
import { html } from './html.js';

export function Install() {
  const here = platform();
  if (here === 'installed') {
    return html`
      <section class="card">
        <h2>${welcomeText.install}</h2>
        <p>${welcomeText.installed}</p>
      </section>
    `;
  }
  return html`
    <section class="card">
      <h2>${welcomeText.install}</h2>
      <p class="soft">${welcomeText.why_install}</p>
      ${
        offer.value
          ? html`
              <button type="button" class="button main" onClick=${() => offer.value.prompt()}>
                ${welcomeText.now}
              </button>
            `
          : html`
              <ol class="numbered">
                ${welcomeText[here].map(
                  (step) => html`
                    <li>${step}</li>
                  `,
                )}
              </ol>
            `
      }
    </section>
  `;
}
