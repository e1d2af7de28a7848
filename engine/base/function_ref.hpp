// A function that is called while it is passed and never kept: a pointer to what is called, no copy
// and no code to copy it with.
#pragma once

#include <concepts>
#include <memory>
#include <type_traits>
#include <utility>

namespace twoclocks::base {

template <class Signature>
class FunctionRef;

/// Refers to any object that can be called so. It must outlive the reference: pass one on, never
/// store one beyond the call it came with.
template <class Out, class... In>
class FunctionRef<Out(In...)> {
  public:
    FunctionRef() = default;

    template <class Callable>

    requires(!std::same_as<std::remove_cvref_t<Callable>, FunctionRef> &&
             std::is_invocable_r_v<Out, const std::remove_reference_t<Callable>&, In...>)
        // NOLINTNEXTLINE(google-explicit-constructor): a lambda is meant to be passed as it stands
        FunctionRef(Callable&& callable)
        : of_(std::addressof(callable)), call_([](const void* of, In... in) -> Out {
              using Called = std::remove_reference_t<Callable>;
              return (*static_cast<const Called*>(of))(std::forward<In>(in)...);
          }) {}

    /// Whether there is anything to call.
    /// Units: none. Errors: none. Source: our choice.
    [[nodiscard]] explicit operator bool() const { return call_ != nullptr; }

    Out operator()(In... in) const { return call_(of_, std::forward<In>(in)...); }

  private:
    const void* of_{nullptr};
    Out (*call_)(const void* of, In... in){nullptr};
};

}  // namespace twoclocks::base
