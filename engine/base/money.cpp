#include "engine/base/money.hpp"

#include <algorithm>
#include <cassert>
#include <optional>

#include "engine/base/message_args.hpp"
#include "engine/base/written_number.hpp"

namespace twoclocks::base {
namespace {

constexpr std::size_t code_letters = 3;

/// ISO 4217 list one of 2024-06-25 [L: npm currency-codes 2.2.0], without the codes that have no
/// minor unit. Run together, three letters each.
struct Group {
    std::int32_t digits;
    std::string_view codes;
};

constexpr std::array<Group, 4> groups{
    {{0, "BIFCLPDJFGNFISKJPYKMFKRWPYGRWFUGXUYIVNDVUVXAFXOFXPF"},
     {2,
      "AEDAFNALLAMDANGAOAARSAUDAWGAZNBAMBBDBDTBGNBMDBNDBOBBOVBRLBSDBTNBWPBYNBZD"
      "CADCDFCHECHFCHWCNYCOPCOUCRCCUCCUPCVECZKDKKDOPDZDEGPERNETBEURFJDFKPGBPGEL"
      "GHSGIPGMDGTQGYDHKDHNLHTGHUFIDRILSINRIRRJMDKESKGSKHRKPWKYDKZTLAKLBPLKRLRD"
      "LSLMADMDLMGAMKDMMKMNTMOPMRUMURMVRMWKMXNMXVMYRMZNNADNGNNIONOKNPRNZDPABPEN"
      "PGKPHPPKRPLNQARRONRSDRUBSARSBDSCRSDGSEKSGDSHPSLESOSSRDSSPSTNSVCSYPSZLTHB"
      "TJSTMTTOPTRYTTDTWDTZSUAHUSDUSNUYUUZSVEDVESWSTXCDYERZARZMWZWG"},
     {3, "BHDIQDJODKWDLYDOMRTND"},
     {4, "CLFUYW"}}};

[[nodiscard]] std::string_view letters_of(const Currency& currency) {
    return {currency.letters.data(), currency.letters.size()};
}

[[nodiscard]] Currency made(std::string_view code) {
    return {{code[0], code[1], code[2]}};
}

[[nodiscard]] bool is_letter(char sign) {
    return (sign >= 'A' && sign <= 'Z') || (sign >= 'a' && sign <= 'z');
}

/// Three letters off the front or the end of `text`; nothing when no letter stands there.
[[nodiscard]] std::string_view took_code(std::string_view& text) {
    std::size_t front = 0;
    while (front < text.size() && is_letter(text[front]))
        ++front;
    std::size_t back = 0;
    while (back < text.size() - front && is_letter(text[text.size() - 1 - back]))
        ++back;
    if (front == 0 && back == 0) return {};
    const std::string_view code =
        front > 0 ? text.substr(0, front) : text.substr(text.size() - back);
    text = front > 0 ? text.substr(front) : text.substr(0, text.size() - back);
    text = without_margins(text);
    return code;
}

[[nodiscard]] std::int64_t ten_to(std::int32_t digits) {
    std::int64_t out = 1;
    for (std::int32_t i = 0; i < digits; ++i)
        out *= 10;
    return out;
}

/// Minor units of what stands behind the decimal sign; nothing when it has more digits than the
/// currency.
[[nodiscard]] std::optional<std::int64_t> fraction(std::string_view digits, std::int32_t most) {
    if (digits.size() > static_cast<std::size_t>(most)) return std::nullopt;
    std::int64_t out = 0;
    for (const char digit : digits)
        out = out * 10 + (digit - '0');
    return out * ten_to(most - static_cast<std::int32_t>(digits.size()));
}

/// An amount without its code.
[[nodiscard]] Result<Money> parse_amount(std::string_view figures,
                                         Currency currency,
                                         const Arg& shown) {
    WrittenNumber number = read_number(figures);
    const std::int32_t digits = minor_digits(currency);
    if (number.form == NumberForm::ambiguous) {
        if (digits > 0) return trouble(Trouble::money_ambiguous, {shown});
        number.form = NumberForm::whole;
    }
    const bool decimal = number.form == NumberForm::decimal;
    if (number.form != NumberForm::whole && !decimal)
        return trouble(Trouble::money_malformed, {shown});
    const auto runs = static_cast<std::int32_t>(number.runs.size());
    const auto whole = joined_runs(number, decimal ? runs - 1 : runs, most_minor_units);
    if (!whole) return trouble(Trouble::money_malformed, {shown});
    const auto behind = decimal ? fraction(number.runs.back(), digits) : std::int64_t{0};
    if (!behind) {
        return trouble(Trouble::money_decimals,
                       {text_arg(print_currency(currency)), whole_arg(digits), shown});
    }
    if (*whole > most_minor_units / ten_to(digits)) return trouble(Trouble::money_absurd, {shown});
    const std::int64_t size = *whole * ten_to(digits) + *behind;
    if (size > most_minor_units) return trouble(Trouble::money_absurd, {shown});
    return Money{number.negative ? -size : size, currency};
}

}  // namespace

const std::vector<Currency>& currencies() {
    static const std::vector<Currency> all = [] {
        std::vector<Currency> out;
        for (const Group& group : groups) {
            for (std::size_t at = 0; at < group.codes.size(); at += code_letters)
                out.push_back(made(group.codes.substr(at, code_letters)));
        }
        std::sort(out.begin(), out.end());
        return out;
    }();
    return all;
}

Result<Currency> parse_currency(std::string_view text) {
    const std::string_view trimmed = without_margins(text);
    if (trimmed.size() == code_letters) {
        Currency currency = made(trimmed);
        for (char& letter : currency.letters)
            if (letter >= 'a' && letter <= 'z') letter = static_cast<char>(letter - 'a' + 'A');
        const std::vector<Currency>& all = currencies();
        if (std::binary_search(all.begin(), all.end(), currency)) return currency;
    }
    return trouble(Trouble::money_currency, {excerpt_arg(text)});
}

std::string print_currency(Currency currency) {
    return std::string{letters_of(currency)};
}

std::int32_t minor_digits(Currency currency) {
    constexpr std::int32_t usual = 2;
    for (const Group& group : groups) {
        for (std::size_t at = 0; at < group.codes.size(); at += code_letters) {
            if (group.codes.substr(at, code_letters) == letters_of(currency)) return group.digits;
        }
    }
    return usual;
}

Result<Money> parse_money(std::string_view text, Currency otherwise) {
    std::string_view figures = without_margins(text);
    const std::string_view code = took_code(figures);
    Currency currency = otherwise;
    if (figures.empty()) return trouble(Trouble::money_malformed, {excerpt_arg(text)});
    if (!code.empty()) {
        const Result<Currency> named = parse_currency(code);
        if (!named) return named.problems();
        currency = named.value();
    }
    return parse_amount(figures, currency, excerpt_arg(text));
}

std::string print_money(Money money) {
    return print_decimal(money.minor_units, minor_digits(money.currency)) + ' ' +
           print_currency(money.currency);
}

Money divided(Money whole, std::int64_t parts, MoneyRound round) {
    assert(parts > 0);
    std::int64_t share = whole.minor_units / parts;
    std::int64_t rest = whole.minor_units % parts;
    if (rest < 0) {
        --share;
        rest += parts;
    }
    const bool more = (round == MoneyRound::up && rest > 0) ||
                      (round == MoneyRound::half_up && rest >= parts - rest);
    return {more ? share + 1 : share, whole.currency};
}

std::int64_t whole_units_up(Money money) {
    constexpr std::int64_t ten = 10;
    std::int64_t unit = 1;
    for (std::int32_t digit = 0; digit < minor_digits(money.currency); ++digit)
        unit *= ten;
    return divided(money, unit, MoneyRound::up).minor_units;
}

std::vector<Money> split(Money whole, std::int32_t parts) {
    const Money least = divided(whole, parts, MoneyRound::down);
    const std::int64_t greater = whole.minor_units - least.minor_units * parts;
    std::vector<Money> out(static_cast<std::size_t>(parts), least);
    for (std::size_t at = 0; at < static_cast<std::size_t>(greater); ++at)
        ++out[at].minor_units;
    return out;
}

}  // namespace twoclocks::base
