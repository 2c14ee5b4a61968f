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
    }
    return {};
}

}  // namespace chalk::ui::print
