#pragma once

#include <QByteArray>
#include <QString>
#include <QStringList>

namespace chalk::test {

/// What a program prints on standard output; a program that is not there or fails is a failure of the test.
QString outputOf(const QString& program, const QStringList& arguments);

/// The words of a PDF, laid out as on its pages.
[[nodiscard]] QString textOfPdf(const QByteArray& pdf);

}  // namespace chalk::test
