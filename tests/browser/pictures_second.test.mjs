import { testThird } from './picture_tests.mjs';

testThird(1);
