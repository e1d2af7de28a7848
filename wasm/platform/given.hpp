// Bytes that came from the page, and who frees them.
#pragma once

#include <cstdint>
#include <cstdlib>
#include <string_view>

namespace twoclocks::canvas {

/// Bytes the shell wrote into our memory with malloc; freed when the call is over.
class Given {
  public:
    Given(char* bytes, std::uint32_t length) : bytes_{bytes}, length_{length} {}

    ~Given() { std::free(bytes_); }

    Given(const Given&) = delete;
    Given& operator=(const Given&) = delete;

    [[nodiscard]] std::string_view text() const { return {bytes_, length_}; }

  private:
    char* bytes_;
    std::uint32_t length_;
};

}  // namespace twoclocks::canvas
