// @ts-check
/** Photos of what is wrong. */
import { html } from '/lib/lit-html/lit-html.js';

const MOST_EDGE = 1280;

/** Keeps a photo of a part, made small enough to send. @param {File | undefined} file @param {string} of @param {import('./entry.js').Kept} draft */
async function photo(file, of, draft) {
  if (!file) return;
  const picture = await createImageBitmap(file);
  const by = Math.min(1, MOST_EDGE / Math.max(picture.width, picture.height));
  const canvas = document.createElement('canvas');
  canvas.width = Math.round(picture.width * by);
  canvas.height = Math.round(picture.height * by);
  canvas.getContext('2d')?.drawImage(picture, 0, 0, canvas.width, canvas.height);
  const data = canvas.toDataURL('image/jpeg', 0.8).split(',')[1];
  await draft.change((/** @type {any} */ d) => { d.photos.push({ of, type: 'image/jpeg', data }); }, false);
}

/** A button that takes a photo. @param {string} of what it shows @param {import('./entry.js').Kept} draft @param {() => void} redraw */
export function photoOf(of, draft, redraw) {
  return html`<label class="button">Photo<span class="hidden">: ${words(of)}</span><input class="hidden" type="file" accept="image/*" capture="environment" @change=${(/** @type {any} */ e) => photo(e.target.files[0], of, draft).then(redraw)} /></label>`;
}

/** The photos of one thing. @param {any[]} all @param {string} of */
export function photos(all, of) {
  return html`<div class="row">${all.filter((p) => p.of === of).map((p) => html`<img class="photo" src=${'data:image/jpeg;base64,' + p.data} alt=${'Photo of ' + words(of)} />`)}</div>`;
}

/** @param {string} id */
const words = (id) => id.replace(/-/g, ' ');
