#pragma once

#include <QByteArray>
#include <QPainterPath>
#include <QRectF>

#include <optional>

namespace chalk::ui::print {

/// The dark modules of a QR code of `text` that fills `square`, error correction level M (ISO/IEC 18004), to be filled black. The
/// quiet zone of four modules around it is the caller's. Nothing where the text is longer than a code holds.
[[nodiscard]] std::optional<QPainterPath> qrCode(const QByteArray& text, const QRectF& square);

/// What a card's code says, `CR1 CODE`: short, plain text that tells nothing about the client.
[[nodiscard]] QByteArray codeText(const QByteArray& sessionCode);

}  // namespace chalk::ui::print
