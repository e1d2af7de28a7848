#include "engine/base/hash.hpp"

#include "catch_amalgamated.hpp"

#include <cstddef>
#include <string>
#include <string_view>

using namespace twoclocks::base;

namespace {

std::string hex_of(std::string_view bytes) {
    return print_hex(sha256(bytes));
}

}  // namespace

TEST_CASE("a length on either side of a block's end is padded rightly", "[base][hash]") {
    // Letters `a`. Computed with Python 3.11 hashlib.
    struct Row {
        std::size_t length;
        const char* digest;
    };

    for (const Row& row :
         {Row{0, "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855"},
          Row{55, "9f4390f8d30c2dd92ec9f095b65e2b9ae9b0a925a5258e241c9f1e910f734318"},
          Row{56, "b35439a4ac6f0948b6d6f9e3c6af0f5f590ce20f1bde7090ef7970686ec6738a"},
          Row{63, "7d3e74a05d7db15bce4ad9ec0658ea98e3f06eeecf16b4c6fff2da457ddc2f34"},
          Row{64, "ffe054fe7ae0cb6dc65c3af9b61d5209f439851db43d0ba5997337df154668eb"},
          Row{65, "635361c48bb9eab14198e76ea8ab7f1a41685d6ad62aa9146d301d4f17eb0ae0"},
          Row{119, "31eba51c313a5c08226adf18d4a359cfdfd8d2e816b13f4af952f7ea6584dcfb"},
          Row{120, "2f3d335432c70b580af0e8e1b3674a7c020d683aa5f73aaaedfdc55af904c21c"}}) {
        CAPTURE(row.length);
        CHECK(hex_of(std::string(row.length, 'a')) == row.digest);
    }
}

TEST_CASE("one bit more or less is another fingerprint", "[base][hash]") {
    const std::string text = "a reading of 1044.0 h";
    for (std::size_t at = 0; at < text.size(); ++at) {
        std::string other = text;
        other[at] = static_cast<char>(other[at] ^ 1);
        CHECK(hex_of(other) != hex_of(text));
        CHECK(crc32c(other) != crc32c(text));
    }
    CHECK(hex_of(std::string("\0", 1)) != hex_of(""));
}

TEST_CASE("hexadecimal is lower case and keeps its zeros", "[base][hash]") {
    Sha256 digest{};
    digest[1] = 0x0A;
    digest[31] = 0xF0;
    CHECK(print_hex(digest) == "000a" + std::string(58, '0') + "f0");
}

TEST_CASE("a check sum goes on where it stopped", "[base][hash]") {
    const std::string text = "a torn tail is cut and reported, never fatal";
    for (std::size_t cut = 0; cut <= text.size(); ++cut) {
        CHECK(crc32c(text.substr(cut), crc32c(text.substr(0, cut))) == crc32c(text));
    }
    CHECK(crc32c("") == 0);
}
