import { useMutation, useQueryClient } from '@tanstack/react-query';
import { useNavigate } from '@tanstack/react-router';
import type { Opened } from '../../contract/index.ts';
import { ask } from '../wire/index.ts';

/** Opens another dossier by a request, then leads to its chronology. */
export function useOpening<Body>(path: '/api/open' | '/api/begin') {
  const client = useQueryClient();
  const navigate = useNavigate();
  return useMutation({
    mutationFn: (body: Body) => ask<Opened>(path, body),
    onSuccess: async () => {
      client.removeQueries({ queryKey: ['dating'] });
      await client.invalidateQueries();
      void navigate({ to: '/' });
    },
  });
}
