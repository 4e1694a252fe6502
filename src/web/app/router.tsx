import {
  createHashHistory,
  createRootRoute,
  createRoute,
  createRouter,
  lazyRouteComponent,
} from '@tanstack/react-router';
import { Bench } from '../bench/Bench.tsx';
import { Chronology } from '../chronology/index.ts';
import { Faults } from '../faults/Faults.tsx';
import { Leads } from '../leads/Leads.tsx';
import { PrintingPage } from '../printings/PrintingPage.tsx';
import { Printings } from '../printings/Printings.tsx';
import { ProductPage } from '../products/ProductPage.tsx';
import { Products } from '../products/Products.tsx';
import { Slips } from '../slips/Slips.tsx';
import { SourcePage } from '../sources/SourcePage.tsx';
import { Sources } from '../sources/Sources.tsx';
import { App } from './App.tsx';
import { readSearch } from './search.ts';

const root = createRootRoute({ component: App });
const at = <Path extends string>(path: Path, component: () => React.ReactNode) =>
  createRoute({ getParentRoute: () => root, path, component });

const chronology = createRoute({
  getParentRoute: () => root,
  path: '/',
  component: Chronology,
  validateSearch: readSearch,
});

const copy = createRoute({
  getParentRoute: () => root,
  path: '/bench/$id',
  component: lazyRouteComponent(() => import('../bench/CopyPage.tsx'), 'CopyPage'),
});

const population = createRoute({
  getParentRoute: () => root,
  path: '/population',
  component: lazyRouteComponent(() => import('../counts/Population.tsx'), 'PopulationScreen'),
});

const labels = createRoute({
  getParentRoute: () => root,
  path: '/population/labels',
  component: lazyRouteComponent(() => import('../counts/Labels.tsx'), 'Labels'),
});

const prices = createRoute({
  getParentRoute: () => root,
  path: '/prices',
  component: lazyRouteComponent(() => import('../prices/Prices.tsx'), 'PricesScreen'),
});

const price = createRoute({
  getParentRoute: () => root,
  path: '/prices/$id',
  component: lazyRouteComponent(() => import('../prices/PricePage.tsx'), 'PricePage'),
});

const begin = createRoute({
  getParentRoute: () => root,
  path: '/begin',
  component: lazyRouteComponent(() => import('../begin/Begin.tsx'), 'Begin'),
});

const decide = createRoute({
  getParentRoute: () => root,
  path: '/decide',
  component: lazyRouteComponent(() => import('../decide/Decide.tsx'), 'Decide'),
});

const identify = createRoute({
  getParentRoute: () => root,
  path: '/identify',
  component: lazyRouteComponent(() => import('../identify/Identify.tsx'), 'IdentifyCard'),
});

const identifyCopy = createRoute({
  getParentRoute: () => root,
  path: '/identify/$id',
  component: lazyRouteComponent(() => import('../identify/Identify.tsx'), 'IdentifyCopy'),
});

const listing = createRoute({
  getParentRoute: () => root,
  path: '/listing',
  component: lazyRouteComponent(() => import('../listing/Listing.tsx'), 'Listing'),
});

const wants = createRoute({
  getParentRoute: () => root,
  path: '/wants',
  component: lazyRouteComponent(() => import('../wants/Wants.tsx'), 'Wants'),
});

const chronicle = createRoute({
  getParentRoute: () => root,
  path: '/chronicle',
  component: lazyRouteComponent(() => import('../chronicle/Chronicle.tsx'), 'ChronicleScreen'),
});

const key = createRoute({
  getParentRoute: () => root,
  path: '/key',
  component: lazyRouteComponent(() => import('../key/Key.tsx'), 'Key'),
});

const advice = createRoute({
  getParentRoute: () => root,
  path: '/decide/$id',
  component: lazyRouteComponent(() => import('../decide/AdvicePage.tsx'), 'AdvicePage'),
});

/** The screens and their addresses, after the `#` of the page's address. */
export const router = createRouter({
  history: createHashHistory(),
  routeTree: root.addChildren([
    chronology,
    at('/printings', Printings),
    at('/printings/$id', PrintingPage),
    at('/products', Products),
    at('/products/$id', ProductPage),
    at('/sources', Sources),
    at('/sources/$id', SourcePage),
    at('/bench', Bench),
    population,
    labels,
    prices,
    price,
    copy,
    decide,
    advice,
    identify,
    identifyCopy,
    key,
    listing,
    wants,
    chronicle,
    at('/slips', Slips),
    at('/leads', Leads),
    at('/faults', Faults),
    begin,
  ]),
});

declare module '@tanstack/react-router' {
  interface Register {
    router: typeof router;
  }
}
