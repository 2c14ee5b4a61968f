#include "ui/print/pdf_date.h"

namespace chalk::ui::print {

QByteArray withCreationDate(QByteArray pdf, const QDate& day)
{
    const QByteArray key = QByteArrayLiteral("/CreationDate (D:");
    const qsizetype start = pdf.indexOf(key) + key.size();
    const qsizetype end = pdf.indexOf(')', start);
    if (start < key.size() || end < 0) {
        return pdf;
    }
    // Everything in a PDF is found by its offset, so the date keeps its length: Qt writes `Z` for UTC and `+hh'mm'` elsewhere.
    const QByteArray time = day.toString(QStringLiteral("yyyyMMdd")).toLatin1() + QByteArrayLiteral("120000");
    const qsizetype zoneLength = end - start - time.size();
    const QByteArray zone = zoneLength == 1 ? QByteArrayLiteral("Z") : QByteArrayLiteral("+00'00'");
    if (zone.size() == zoneLength) {
        pdf.replace(start, end - start, QByteArray(time + zone));
    }
    return pdf;
}

}  // namespace chalk::ui::print
