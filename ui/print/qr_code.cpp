#include "ui/print/qr_code.h"

#include <memory>

#include <qrencode.h>

namespace chalk::ui::print {

namespace {

struct FreeCode {
    void operator()(QRcode* code) const { QRcode_free(code); }
};

}  // namespace

std::optional<QPainterPath> qrCode(const QByteArray& text, const QRectF& square)
{
    const std::unique_ptr<QRcode, FreeCode> code(
        QRcode_encodeString8bit(text.constData(), 0, QR_ECLEVEL_M));
    if (!code) {
        return std::nullopt;
    }
    const int modules = code->width;
    const double side = square.width() / modules;
    const auto isDark = [&code, modules](int row, int column) { return (code->data[row * modules + column] & 1U) != 0; };
    QPainterPath path;
    path.setFillRule(Qt::WindingFill);
    for (int row = 0; row < modules; ++row) {
        for (int column = 0; column < modules;) {
            const int from = column;
            while (column < modules && isDark(row, column)) {
                ++column;
            }
            if (column > from) {
                path.addRect(square.x() + from * side, square.y() + row * side, (column - from) * side, side);
            }
            ++column;
        }
    }
    return path;
}

QByteArray codeText(const QByteArray& sessionCode)
{
    return QByteArrayLiteral("CR1 ") + sessionCode;
}

}  // namespace chalk::ui::print
