import { afterEach, expect, it, vi } from 'vitest';
import { News } from '../../src/storage';

const open: News[] = [];
function tab(): News {
  const news = new News();
  open.push(news);
  return news;
}
afterEach(() => open.splice(0).forEach((news) => news.close()));

it('goes to every other tab, not to the one that tells it', async () => {
  const [first, second, third] = [tab(), tab(), tab()];
  const [own, heard] = [vi.fn(), vi.fn()];
  first.listen(own);
  second.listen(heard);
  const there = third.heard(({ kind }) => kind === 'written', 5000);
  first.tell({ kind: 'written', id: 'a' });
  await there;
  await vi.waitFor(() => expect(heard).toHaveBeenCalledExactlyOnceWith({ kind: 'written', id: 'a' }));
  expect(own).not.toHaveBeenCalled();
});

it('is not heard after the listening has ended, and not waited for without end', async () => {
  const [first, second] = [tab(), tab()];
  const heard = vi.fn();
  second.listen(heard)();
  const other = second.heard(({ kind }) => kind === 'settled', 20);
  first.tell({ kind: 'written', id: 'a' });
  await other;
  expect(heard).not.toHaveBeenCalled();
});
