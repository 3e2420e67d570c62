import { mount } from 'svelte';
import App from './App.svelte';

const target = document.getElementById('app');
if (!target) throw new Error('The page has no place for the app.');
target.replaceChildren();
mount(App, { target });
