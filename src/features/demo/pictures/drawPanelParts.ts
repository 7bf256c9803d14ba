import { px } from './demoLook.js';

const turn = (x: number, y: number, radius: number, degrees: number): [string, string] => {
  const angle = ((degrees - 90) * Math.PI) / 180;
  return [px(x + radius * Math.cos(angle)), px(y + radius * Math.sin(angle))];
};

export function drawKnob(x: number, y: number, radius: number, degrees: number): string {
  const [tipX, tipY] = turn(x, y, radius * 0.8, degrees);
  return `<circle cx="${px(x)}" cy="${px(y + 4)}" r="${px(radius + 2)}" fill="#000" opacity=".35"/>
<circle cx="${px(x)}" cy="${px(y)}" r="${px(radius)}" fill="url(#knob)"/>
<circle cx="${px(x)}" cy="${px(y)}" r="${px(radius * 0.62)}" fill="#2a2826"/>
<path d="M${px(x)} ${px(y)}L${tipX} ${tipY}" stroke="#efe6d2" stroke-width="3" stroke-linecap="round"/>`;
}

/** Ticks on an arc, every fifth one long. */
function ticks(x: number, y: number, radius: number, from: number, to: number): string {
  const count = 30;
  const lines = Array.from({ length: count + 1 }, (_, index) => {
    const degrees = from + ((to - from) * index) / count;
    const inner = index % 5 === 0 ? 0.8 : 0.9;
    const [startX, startY] = turn(x, y, radius * inner, degrees);
    const [endX, endY] = turn(x, y, radius, degrees);
    return `M${startX} ${startY}L${endX} ${endY}`;
  });
  return `<path d="${lines.join('')}" stroke="#3a2f1d" stroke-width="2" fill="none"/>`;
}

export function drawRoundDial(x: number, y: number, radius: number): string {
  const [tipX, tipY] = turn(x, y, radius * 0.85, 40);
  return `<circle cx="${px(x)}" cy="${px(y)}" r="${px(radius + 8)}" fill="#1d1c1a"/>
<circle cx="${px(x)}" cy="${px(y)}" r="${px(radius)}" fill="url(#glow)"/>
${ticks(x, y, radius * 0.95, -135, 135)}
<path d="M${px(x)} ${px(y)}L${tipX} ${tipY}" stroke="#a3231b" stroke-width="4"/>
${drawKnob(x, y, radius * 0.4, 40)}`;
}

export function drawFanDial(x: number, y: number, radius: number): string {
  const [tipX, tipY] = turn(x, y, radius * 0.9, -18);
  return `<path d="M${px(x - radius)} ${px(y)}A${px(radius)} ${px(radius)} 0 0 1 ${px(x + radius)} ${px(y)}Z" fill="url(#glow)" stroke="#1d1c1a" stroke-width="8"/>
${ticks(x, y, radius * 0.94, -80, 80)}
<path d="M${px(x)} ${px(y)}L${tipX} ${tipY}" stroke="#a3231b" stroke-width="4"/>
${drawKnob(x, y + radius * 0.42, radius * 0.32, 200)}`;
}

export function drawSlotDial(x: number, y: number, width: number): string {
  const height = width * 0.22;
  const lines = Array.from({ length: 25 }, (_, index) => {
    const at = px(x - width / 2 + 14 + ((width - 28) * index) / 24);
    return `M${at} ${px(y - height / 2 + 8)}v${index % 4 === 0 ? 20 : 10}`;
  });
  return `<rect x="${px(x - width / 2)}" y="${px(y - height / 2)}" width="${px(width)}" height="${px(height)}" rx="6" fill="url(#glow)" stroke="#1d1c1a" stroke-width="7"/>
<path d="${lines.join('')}" stroke="#3a2f1d" stroke-width="2"/>
<path d="M${px(x + width * 0.16)} ${px(y - height / 2)}v${px(height)}" stroke="#a3231b" stroke-width="4"/>
${drawKnob(x, y + height * 1.2, width * 0.12, 75)}`;
}

export function drawMeter(x: number, y: number, width: number): string {
  const [tipX, tipY] = turn(x, y + width * 0.25, width * 0.42, -30);
  return `<rect x="${px(x - width / 2)}" y="${px(y - width * 0.36)}" width="${px(width)}" height="${px(width * 0.72)}" rx="8" fill="#f3ead2" stroke="#1d1c1a" stroke-width="6"/>
${ticks(x, y + width * 0.25, width * 0.45, -50, 50)}
<path d="M${px(x)} ${px(y + width * 0.25)}L${tipX} ${tipY}" stroke="#222" stroke-width="2.5"/>`;
}

export function drawVents(x: number, y: number, width: number, count: number): string {
  const lines = Array.from(
    { length: count },
    (_, row) => `M${px(x)} ${px(y + row * 16)}h${px(width)}`,
  );
  return `<path d="${lines.join('')}" stroke="#171614" stroke-width="7" stroke-linecap="round" opacity=".75"/>`;
}

export function drawGrille(x: number, y: number, radius: number): string {
  const rings = [1, 0.82, 0.64, 0.46, 0.28].map(
    (share) =>
      `<circle cx="${px(x)}" cy="${px(y)}" r="${px(radius * share)}" fill="none" stroke="#14130f" stroke-width="9" opacity=".8"/>`,
  );
  return `<circle cx="${px(x)}" cy="${px(y)}" r="${px(radius * 1.06)}" fill="#4a4438"/>${rings.join('')}`;
}
