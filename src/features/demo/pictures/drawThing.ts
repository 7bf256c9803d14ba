import { px, type DemoLook } from './demoLook.js';
import {
  drawFanDial,
  drawGrille,
  drawKnob,
  drawMeter,
  drawRoundDial,
  drawSlotDial,
  drawVents,
} from './drawPanelParts.js';

const box = (x: number, y: number, width: number, height: number, look: DemoLook): string =>
  `<rect x="${px(x + 30)}" y="${px(y + height + 4)}" width="60" height="16" fill="#15130f"/>
<rect x="${px(x + width - 90)}" y="${px(y + height + 4)}" width="60" height="16" fill="#15130f"/>
<rect x="${px(x)}" y="${px(y)}" width="${px(width)}" height="${px(height + 6)}" rx="14" fill="${look.cabinet}"/>
<rect x="${px(x)}" y="${px(y)}" width="${px(width)}" height="${px(height + 6)}" rx="14" fill="url(#sheen)"/>
<rect x="${px(x + 22)}" y="${px(y + 22)}" width="${px(width - 44)}" height="${px(height - 38)}" rx="6" fill="${look.panel}" stroke="#0008" stroke-width="3"/>`;

function drawSet(look: DemoLook): string {
  const { dial, knobs, hasMeter } = look;
  const dials = {
    ROUND: () => drawRoundDial(390, 250, 105),
    FAN: () => drawFanDial(400, 290, 135),
    SLOT: () => drawSlotDial(400, 215, 330),
    NONE: () => drawVents(280, 190, 240, 6),
  };
  const row = Array.from({ length: knobs }, (_, index) =>
    drawKnob(
      190 + (580 / Math.max(knobs - 1, 1)) * index,
      425,
      index % 3 === 0 ? 30 : 24,
      (index * 67) % 300,
    ),
  );
  const right = hasMeter ? drawMeter(680, 230, 150) : drawVents(620, 180, 130, 7);
  return `${box(130, 110, 700, 390, look)}${dials[dial]()}${right}${row.join('')}
<circle cx="215" cy="185" r="10" fill="#c2541f" stroke="#201a12" stroke-width="4"/>`;
}

const drawSupply = (look: DemoLook): string =>
  `${box(250, 200, 460, 300, look)}${drawVents(300, 260, 240, 9)}${drawKnob(630, 420, 26, 30)}
<circle cx="630" cy="280" r="14" fill="#c2341f" stroke="#201a12" stroke-width="5"/>`;

const drawSpeaker = (look: DemoLook): string =>
  `${box(290, 120, 380, 380, look)}${drawGrille(480, 305, 130)}`;

const drawMicrophone = ({ cabinet, panel }: DemoLook): string =>
  `<ellipse cx="480" cy="500" rx="130" ry="26" fill="#15130f" opacity=".5"/>
<path d="M370 492a110 30 0 0 1 220 0z" fill="${cabinet}"/><rect x="468" y="300" width="24" height="180" fill="${cabinet}"/>
<rect x="405" y="120" width="150" height="200" rx="70" fill="${panel}" stroke="#15130f" stroke-width="6"/>
<path d="M425 170h110M418 195h124M416 220h128M418 245h124M425 270h110" stroke="#15130f" stroke-width="8"/>
<path d="M590 495q120 40 260-20" fill="none" stroke="#15130f" stroke-width="9"/>`;

const drawKey = ({ cabinet, panel }: DemoLook): string =>
  `<ellipse cx="480" cy="500" rx="290" ry="26" fill="#15130f" opacity=".45"/>
<rect x="220" y="430" width="520" height="62" rx="8" fill="${cabinet}"/><rect x="220" y="430" width="520" height="62" rx="8" fill="url(#sheen)"/>
<rect x="300" y="372" width="300" height="22" rx="9" fill="${panel}"/><rect x="410" y="350" width="36" height="84" fill="${panel}"/>
<rect x="560" y="392" width="14" height="40" fill="${panel}"/><rect x="310" y="392" width="14" height="40" fill="${panel}"/>
<path d="M600 383h70" stroke="${panel}" stroke-width="14"/><ellipse cx="690" cy="366" rx="48" ry="20" fill="#201d19"/><rect x="676" y="370" width="28" height="26" fill="#201d19"/>`;

const drawCoupler = (look: DemoLook): string =>
  `${box(220, 210, 520, 290, look)}${drawRoundDial(350, 350, 68)}${drawRoundDial(610, 350, 68)}${drawMeter(480, 310, 100)}`;

const drawHeadphones = ({ cabinet, panel }: DemoLook): string =>
  `<ellipse cx="480" cy="500" rx="220" ry="24" fill="#15130f" opacity=".45"/>
<path d="M310 400C300 120 660 120 650 400" fill="none" stroke="${panel}" stroke-width="18"/>
<rect x="260" y="350" width="92" height="150" rx="40" fill="${cabinet}"/><rect x="608" y="350" width="92" height="150" rx="40" fill="${cabinet}"/>
<path d="M306 495q60 70 330 24t190-10" fill="none" stroke="#3b2a1c" stroke-width="8"/>`;

const shapes: Record<DemoLook['shape'], (look: DemoLook) => string> = {
  SET: drawSet,
  SUPPLY: drawSupply,
  SPEAKER: drawSpeaker,
  MICROPHONE: drawMicrophone,
  KEY: drawKey,
  COUPLER: drawCoupler,
  HEADPHONES: drawHeadphones,
};

/** Spots of dust and rust, each where it is whenever the picture is drawn. */
function drawGrime(grime: number): string {
  const spots = Array.from({ length: Math.round(grime * 120) }, (_, index) => {
    const x = 150 + ((index * 193) % 660);
    const y = 120 + ((index * 127) % 370);
    const radius = 3 + ((index * 31) % 17);
    const colour = index % 3 === 0 ? '#6b3a17' : '#b9ad94';
    return `<ellipse cx="${x}" cy="${y}" rx="${radius}" ry="${px(radius * 0.6)}" fill="${colour}" opacity=".45"/>`;
  });
  return spots.join('');
}

/** A thing on a bench, as SVG of 960 × 640. */
export const drawThing = (
  look: DemoLook,
): string => `<svg xmlns="http://www.w3.org/2000/svg" width="960" height="640" viewBox="0 0 960 640">
<defs><linearGradient id="wall" x2="0" y2="1"><stop stop-color="#d8d0bf"/><stop offset="1" stop-color="#b3a88f"/></linearGradient>
<linearGradient id="bench" x2="0" y2="1"><stop stop-color="#8a6640"/><stop offset="1" stop-color="#5d4227"/></linearGradient>
<linearGradient id="sheen" x2="0" y2="1"><stop stop-color="#fff" stop-opacity=".28"/><stop offset=".3" stop-color="#fff" stop-opacity="0"/><stop offset="1" stop-color="#000" stop-opacity=".3"/></linearGradient>
<radialGradient id="knob"><stop stop-color="#5c5650"/><stop offset=".8" stop-color="#35312d"/><stop offset="1" stop-color="#171513"/></radialGradient>
<radialGradient id="glow"><stop stop-color="#fbefc6"/><stop offset="1" stop-color="#e0c583"/></radialGradient></defs>
<rect width="960" height="640" fill="url(#wall)"/><rect y="490" width="960" height="150" fill="url(#bench)"/>
<ellipse cx="480" cy="524" rx="380" ry="22" fill="#000" opacity=".22"/>
${shapes[look.shape](look)}${drawGrime(look.grime)}</svg>`;
