/** The service worker: its own small script beside the page. The build puts the list of its files in. */
import { serve, type Build, type WorkerScope } from './serve';

declare const BUILD_OF_EDGEWISE: Build;

serve(self as unknown as WorkerScope, BUILD_OF_EDGEWISE);
