// A second third of all pages.
import { testThird } from './picture_tests.mjs';

testThird(1);
