#pragma once

#include <cstdint>
#include <vector>

namespace chalk::plateau {

/// Tells an index that is far from the usual one. Knows one segment.
class JumpRule {
public:
    enum class Step : std::uint8_t {
        Usual,
        Jump,     ///< not to be used
        NewLevel  ///< the third jump the same way in a row: it starts another segment, with a new rule
    };

    /// What the index of an exposure is that is else sound.
    [[nodiscard]] Step step(double index);
    /// An exposure came between that is not used for another reason: a run of jumps ends.
    void passUnused() { m_run = 0; }
    /// The index counts, and is of the usual ones.
    void take(double index) { m_indices.push_back(index); }

private:
    std::vector<double> m_indices;
    int m_run = 0;  ///< jumps in a row, negative downwards
};

}  // namespace chalk::plateau
