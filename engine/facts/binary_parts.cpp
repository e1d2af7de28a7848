// Whole numbers, texts and unknown fields as bytes: what the snapshot is made of.
#include "engine/facts/binary.hpp"
#include "engine/facts/json.hpp"

namespace twoclocks::facts {
namespace {

constexpr std::int64_t most_unknown = 1'000'000;

}  // namespace

void write_whole(std::int64_t number, std::string& out) {
    auto bits = static_cast<std::uint64_t>(number);
    // Zigzag, then seven bits a byte: small numbers of either sign stay small.
    bits = bits << 1U ^ (number < 0 ? ~std::uint64_t{0} : 0U);
    while (bits >= 0x80U) {
        out += static_cast<char>((bits & 0x7FU) | 0x80U);
        bits >>= 7U;
    }
    out += static_cast<char>(bits);
}

void write_text(std::string_view text, std::string& out) {
    write_whole(static_cast<std::int64_t>(text.size()), out);
    out += text;
}

bool read_whole(std::string_view& in, std::int64_t& number) {
    std::uint64_t bits = 0;
    for (unsigned shift = 0; shift < 64; shift += 7) {
        if (in.empty()) return false;
        const auto byte = static_cast<std::uint8_t>(in.front());
        in.remove_prefix(1);
        bits |= static_cast<std::uint64_t>(byte & 0x7FU) << shift;
        if ((byte & 0x80U) != 0) continue;
        number =
            static_cast<std::int64_t>(bits >> 1U ^ ((bits & 1U) != 0 ? ~std::uint64_t{0} : 0U));
        return true;
    }
    return false;
}

bool read_text(std::string_view& in, std::string& text) {
    std::int64_t size = 0;
    if (!read_whole(in, size) || size < 0 || static_cast<std::uint64_t>(size) > in.size())
        return false;
    text = in.substr(0, static_cast<std::size_t>(size));
    in.remove_prefix(static_cast<std::size_t>(size));
    return true;
}

void write_extra(const Extra& extra, std::string& out) {
    write_whole(static_cast<std::int64_t>(extra.size()), out);
    for (const auto& [key, value] : extra) {
        std::string text = "{\"v\":";
        print_json(value, text);
        write_text(key, out);
        write_text(text + '}', out);
    }
}

bool read_extra(std::string_view& in, Extra& extra) {
    std::int64_t left = 0;
    if (!read_whole(in, left) || left < 0 || left > most_unknown) return false;
    for (; left > 0; --left) {
        std::string key;
        std::string text;
        if (!read_text(in, key) || !read_text(in, text)) return false;
        const base::Result<Json> json = read_json(text, 0);
        if (!json || json.value().find("v") == nullptr) return false;
        extra.emplace_back(std::move(key), *json.value().find("v"));
    }
    return true;
}

}  // namespace twoclocks::facts
