#pragma once

#include <stdexcept>
#include <utility>
#include <variant>

namespace sheerlay {

/// Wraps an error on its way into an Expected: `return unexpected(FitError::TooFewPoints);`
template <class E> struct Unexpected { E error; };

template <class E> [[nodiscard]] Unexpected<std::decay_t<E>> unexpected(E&& error) {
    return {std::forward<E>(error)};
}

/// A value, or the reason why there is none. Carries the names of std::expected, which GCC 12 lacks in C++20.
/// @throws std::logic_error  value() without a value, error() without an error: the caller did not look
template <class T, class E> class [[nodiscard]] Expected {
public:
    Expected(T value) : m_content(std::in_place_index<0>, std::move(value)) {}                   // NOLINT
    Expected(Unexpected<E> error) : m_content(std::in_place_index<1>, std::move(error.error)) {} // NOLINT

    [[nodiscard]] bool has_value() const noexcept { return m_content.index() == 0; }
    explicit operator bool() const noexcept { return has_value(); }

    [[nodiscard]] const T& value() const& {
        requireValue();
        return std::get<0>(m_content);
    }
    [[nodiscard]] T& value() & {
        requireValue();
        return std::get<0>(m_content);
    }
    [[nodiscard]] T&& value() && {
        requireValue();
        return std::get<0>(std::move(m_content));
    }
    [[nodiscard]] const E& error() const {
        if (has_value())
            throw std::logic_error("Expected::error() called on a value");
        return std::get<1>(m_content);
    }
    const T& operator*() const& { return value(); }
    T& operator*() & { return value(); }
    const T* operator->() const { return &value(); }
    T* operator->() { return &value(); }

private:
    void requireValue() const {
        if (!has_value())
            throw std::logic_error("Expected::value() called on an error");
    }
    std::variant<T, E> m_content;
};

} // namespace sheerlay
