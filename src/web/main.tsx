import { QueryClient, QueryClientProvider } from '@tanstack/react-query';
import { RouterProvider } from '@tanstack/react-router';
import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { storedLook, wear } from './app/look.ts';
import { router } from './app/router.tsx';

wear(storedLook());

// The buttons of react-aria would otherwise add a style element, which the page's policy forbids;
// what it would say stands in looks/base.css.
const known = document.createElement('meta');
known.id = 'react-aria-pressable-style';
document.head.append(known);

const client = new QueryClient({
  defaultOptions: {
    queries: { refetchOnWindowFocus: false, retry: 2, networkMode: 'always' },
    mutations: { networkMode: 'always' },
  },
});
const root = document.getElementById('root');
if (!root) throw new Error('the page has no #root');
createRoot(root).render(
  <StrictMode>
    <QueryClientProvider client={client}>
      <RouterProvider router={router} />
    </QueryClientProvider>
  </StrictMode>,
);

// Over a hundred slices a script are many rules to read: after the first view, and then a slice is
// only fetched when one of its letters is shown.
requestAnimationFrame(() => void import('./looks/east-asian.css'));
