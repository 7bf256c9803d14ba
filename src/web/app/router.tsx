import {
  createRootRoute,
  createRoute,
  createRouter,
  lazyRouteComponent,
} from '@tanstack/react-router';
import { Frame } from './Frame.js';
import { NotFound } from './NotFound.js';
import { readShelfSearch } from '../pages/shelf/shelfSearch.js';
import { readTonightSearch } from '../pages/tonight/tonightSearch.js';

const root = createRootRoute({ component: Frame, notFoundComponent: NotFound });

const tonight = createRoute({
  getParentRoute: () => root,
  path: '/',
  validateSearch: readTonightSearch,
  component: lazyRouteComponent(() => import('../pages/tonight/TonightPage.js'), 'TonightPage'),
});

const collection = createRoute({
  getParentRoute: () => root,
  path: '/collection',
  validateSearch: readShelfSearch,
  component: lazyRouteComponent(() => import('../pages/shelf/ShelfPage.js'), 'ShelfPage'),
});

const set = createRoute({
  getParentRoute: () => root,
  path: '/sets/$number',
  component: lazyRouteComponent(() => import('../pages/set/SetPage.js'), 'SetPage'),
});

const pictures = createRoute({
  getParentRoute: () => root,
  path: '/sets/$number/pictures',
  component: lazyRouteComponent(() => import('../pages/pictures/PicturesPage.js'), 'PicturesPage'),
});

const change = createRoute({
  getParentRoute: () => root,
  path: '/sets/$number/change',
  component: lazyRouteComponent(() => import('../pages/change/ChangePage.js'), 'ChangePage'),
});

const bringUp = createRoute({
  getParentRoute: () => root,
  path: '/sets/$number/bring-up',
  // The run that is looked at; without it the one in hand.
  validateSearch: ({ run }: Record<string, unknown>): { run?: string } =>
    typeof run === 'string' ? { run } : {},
  component: lazyRouteComponent(() => import('../pages/bringUp/BringUpPage.js'), 'BringUpPage'),
});

const plan = createRoute({
  getParentRoute: () => root,
  path: '/sets/$number/plan',
  component: lazyRouteComponent(() => import('../pages/plan/PlanPage.js'), 'PlanPage'),
});

const provenance = createRoute({
  getParentRoute: () => root,
  path: '/sets/$number/provenance',
  component: lazyRouteComponent(
    () => import('../pages/provenance/ProvenancePage.js'),
    'ProvenancePage',
  ),
});

const wanted = createRoute({
  getParentRoute: () => root,
  path: '/wanted',
  component: lazyRouteComponent(() => import('../pages/wanted/WantedPage.js'), 'WantedPage'),
});

const bringList = createRoute({
  getParentRoute: () => root,
  path: '/bring-a-list',
  component: lazyRouteComponent(() => import('../pages/import/ImportPage.js'), 'ImportPage'),
});

const bringLog = createRoute({
  getParentRoute: () => root,
  path: '/bring-a-log',
  component: lazyRouteComponent(
    () => import('../pages/contactLog/ContactLogPage.js'),
    'ContactLogPage',
  ),
});

const books = createRoute({
  getParentRoute: () => root,
  path: '/books',
  component: lazyRouteComponent(() => import('../pages/books/BooksPage.js'), 'BooksPage'),
});

const waysOut = createRoute({
  getParentRoute: () => root,
  path: '/ways-out',
  component: lazyRouteComponent(() => import('../pages/waysOut/WaysOutPage.js'), 'WaysOutPage'),
});

const benchChoice = createRoute({
  getParentRoute: () => root,
  path: '/bench',
  component: lazyRouteComponent(
    () => import('../pages/bench/BenchChoicePage.js'),
    'BenchChoicePage',
  ),
});

const bench = createRoute({
  getParentRoute: () => root,
  path: '/bench/$number',
  // The task in hand; “none” for none although a timer runs on one.
  validateSearch: ({ task }: Record<string, unknown>): { task?: string } =>
    typeof task === 'string' ? { task } : {},
  component: lazyRouteComponent(() => import('../pages/bench/BenchPage.js'), 'BenchPage'),
});

const intake = createRoute({
  getParentRoute: () => root,
  path: '/intake',
  component: lazyRouteComponent(() => import('../pages/intake/IntakePage.js'), 'IntakePage'),
});

const intakeWalk = createRoute({
  getParentRoute: () => root,
  path: '/intake/$number',
  component: lazyRouteComponent(
    () => import('../pages/intake/IntakeWalkPage.js'),
    'IntakeWalkPage',
  ),
});

const buy = createRoute({
  getParentRoute: () => root,
  path: '/buy',
  component: lazyRouteComponent(() => import('../pages/buy/BuyPage.js'), 'BuyPage'),
});

const lot = createRoute({
  getParentRoute: () => root,
  path: '/lots/$id',
  component: lazyRouteComponent(() => import('../pages/buy/LotPage.js'), 'LotPage'),
});

/** Every address of the dashboard. */
export const router = createRouter({
  routeTree: root.addChildren([
    tonight,
    collection,
    set,
    pictures,
    change,
    bringUp,
    plan,
    provenance,
    wanted,
    books,
    bringList,
    bringLog,
    waysOut,
    benchChoice,
    bench,
    intake,
    intakeWalk,
    buy,
    lot,
  ]),
  defaultPreload: 'intent',
  scrollRestoration: true,
});

declare module '@tanstack/react-router' {
  interface Register {
    router: typeof router;
  }
}
