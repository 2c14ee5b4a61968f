#include "ui/print/paper.h"

#include <QPageSize>

namespace chalk::ui::print {

QSizeF millimetresOf(PaperSize paper)
{
    switch (paper) {
    case PaperSize::A5:
        return {148, 210};
    case PaperSize::HalfLetter:
        return {139.7, 215.9};
    case PaperSize::A4:
        return {210, 297};
    case PaperSize::Letter:
        return {215.9, 279.4};
    }
    return {};
}

QPageSize pageSizeOf(PaperSize paper)
{
    switch (paper) {
    case PaperSize::A5:
        return QPageSize(QPageSize::A5);
    case PaperSize::HalfLetter:
        return QPageSize(millimetresOf(paper), QPageSize::Millimeter, QStringLiteral("Half Letter"), QPageSize::ExactMatch);
    case PaperSize::A4:
        return QPageSize(QPageSize::A4);
    case PaperSize::Letter:
        return QPageSize(QPageSize::Letter);
    }
    return {};
}

}  // namespace chalk::ui::print
