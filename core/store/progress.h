#pragma once

#include <functional>

namespace chalk::store {

/// Told how many of how many things are done; answers whether to go on.
using Progress = std::function<bool(int done, int of)>;

}  // namespace chalk::store
