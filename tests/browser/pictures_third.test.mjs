// The last third of all pages.
import { testThird } from './picture_tests.mjs';

testThird(2);
