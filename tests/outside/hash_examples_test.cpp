// Published examples for the fingerprints and the names of facts.
#include "catch_amalgamated.hpp"

#include <string>

#include "engine/base/hash.hpp"
#include "engine/base/id.hpp"

using namespace twoclocks::base;

TEST_CASE("SHA-256 gives the examples of its standard", "[outside][hash]") {
    // Source: NIST, FIPS 180-4 and its published examples: one block, two blocks, a million
    // letters; FIPS 180-2 appendix B.1 to B.3 prints the same. [M], each confirmed with Python 3.11
    // hashlib [L]
    CHECK(print_hex(sha256("abc")) ==
          "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
    CHECK(print_hex(sha256("abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq")) ==
          "248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1");
    CHECK(print_hex(sha256("abcdefghbcdefghicdefghijdefghijkefghijklfghijklmghijklmn"
                           "hijklmnoijklmnopjklmnopqklmnopqrlmnopqrsmnopqrstnopqrstu")) ==
          "cf5b16a778af8380036ce59e7b0492370b249b11e8f07a51afac45037afee9d1");
    CHECK(print_hex(sha256(std::string(1'000'000, 'a'))) ==
          "cdc76e5c9914fb9281a1c7e284d73e67f1809a48a497200e046d39ccc7112cd0");
}

TEST_CASE("CRC-32C gives the examples of its standard", "[outside][hash]") {
    // Source: RFC 3720 appendix B.4; the digits 1 to 9 are the customary check value. [M], each
    // confirmed with a bit-by-bit division in Python 3.11 [L]
    std::string rising;
    std::string falling;
    for (int i = 0; i < 32; ++i) {
        rising += static_cast<char>(i);
        falling += static_cast<char>(31 - i);
    }
    CHECK(crc32c("123456789") == 0xE3069283U);
    CHECK(crc32c(std::string(32, '\0')) == 0x8A9136AAU);
    CHECK(crc32c(std::string(32, '\xFF')) == 0x62A8AB43U);
    CHECK(crc32c(rising) == 0x46DD794EU);
    CHECK(crc32c(falling) == 0x113FDB5CU);
}

TEST_CASE("an id is the example of its standard", "[outside][id]") {
    // Source: RFC 9562 appendix A.6: 2022-02-22T19:22:22Z, rand_a CC3, rand_b 18C4DC0C0C07398F.
    // [M], the value confirmed in other people's tests that cite the same appendix.
    const Id id = make_id(1'645'557'742'000, 0xCC3, 0x18C4'DC0C'0C07'398F);
    CHECK(print_id(id) == "017f22e2-79b0-7cc3-98c4-dc0c0c07398f");
    CHECK(made_at_ms(parse_id("017f22e2-79b0-7cc3-98c4-dc0c0c07398f").value()) ==
          1'645'557'742'000);
}
