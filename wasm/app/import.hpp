// A file that was chosen: what it would change, before it changes anything.
#pragma once

#include "wasm/app/ledger.hpp"
#include "wasm/screen.hpp"

#include "engine/facts/parse.hpp"

namespace twoclocks::canvas {

/// A read file, waiting for the person to join it or to leave it.
struct Import {
    std::string file_name;
    facts::Parsed parsed;
    std::vector<facts::Fact> fresh;  // facts that are not visible here yet
    ImportPreview preview;
};

/// Reads a file and works out what joining it would change on a day.
[[nodiscard]] Import read_import(std::string_view file_name,
                                 std::string_view bytes,
                                 const facts::Journal& journal,
                                 base::Date today);

}  // namespace twoclocks::canvas
