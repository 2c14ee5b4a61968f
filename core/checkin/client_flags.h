#pragma once

#include "core/checkin/attention.h"

#include <array>
#include <cstdint>
#include <string_view>
#include <vector>

namespace chalk::checkin {

/// What a list of everybody marks a client with, the most pressing first.
enum class ClientFlag : std::uint8_t { Clearance, Pain, Plateau, Missed, Rescreen, Ready, Away, New };

inline constexpr std::array kClientFlags{ClientFlag::Clearance, ClientFlag::Pain,  ClientFlag::Plateau, ClientFlag::Missed,
                                         ClientFlag::Rescreen,  ClientFlag::Ready, ClientFlag::Away,    ClientFlag::New};

/// The flag that stands for a reason.
[[nodiscard]] ClientFlag flagOf(const AttentionReason& reason);

/// A client's flags on `day`, the most pressing first: those of `reasons`, and Away and New. Who waits for clearance is not called
/// new: nothing has begun.
[[nodiscard]] std::vector<ClientFlag> flagsFor(const ClientFacts& facts, const std::vector<AttentionReason>& reasons, base::Date day,
                                               const AttentionThresholds& thresholds = {});

/// Whether the client counts as flagged. Being away alone needs nobody's care.
[[nodiscard]] bool isFlagged(const std::vector<ClientFlag>& flags);

/// The key in files: `clearance`, `pain` …
[[nodiscard]] std::string_view keyOf(ClientFlag flag);

}  // namespace chalk::checkin
