// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <memory>
#include <utility>
#include <vector>

namespace winterlarder::exchange {

//! A list that takes one pointer while it is empty. Most values of a JSON text hold neither items nor members, and there are millions.
//! Reads as a std::vector does; the element may still be incomplete where it is declared.
template <class T> class BoxedList {
public:
    BoxedList() = default;
    BoxedList(BoxedList&&) noexcept = default;
    BoxedList& operator=(BoxedList&&) noexcept = default;
    BoxedList(const BoxedList& other) : box_(other.box_ ? std::make_unique<std::vector<T>>(*other.box_) : nullptr) {}
    BoxedList& operator=(const BoxedList& other) { return *this = BoxedList(other); }
    ~BoxedList() = default;

    std::size_t size() const { return box_ ? box_->size() : 0; }
    bool empty() const { return size() == 0; }
    const T* begin() const { return box_ ? box_->data() : nullptr; }
    const T* end() const { return begin() + size(); }
    const T& operator[](std::size_t at) const { return (*box_)[at]; }
    const T& at(std::size_t place) const { return list().at(place); }
    const T& front() const { return box_->front(); }
    const T& back() const { return box_->back(); }
    T& front() { return box_->front(); }
    void push_back(T value) {
        if (!box_) box_ = std::make_unique<std::vector<T>>();
        box_->push_back(std::move(value));
    }
    //! Gives back what was set aside for more.
    void shrink() {
        if (box_) box_->shrink_to_fit();
    }
    const std::vector<T>& list() const {
        static const std::vector<T> none;
        return box_ ? *box_ : none;
    }

private:
    std::unique_ptr<std::vector<T>> box_;
};

} // namespace winterlarder::exchange
