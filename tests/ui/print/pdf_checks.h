#pragma once

#include <QByteArray>
#include <QImage>
#include <QString>
#include <QTemporaryDir>

#include <string>

namespace chalk::test {

/// What a program prints on standard output; a program that is not there or fails is a failure of the test.
[[nodiscard]] QString outputOf(const QString& program, const QStringList& arguments);
[[nodiscard]] std::string say(const QString& text);

/// A PDF in a folder of its own, looked at by programs that are not ours.
class PdfFile {
public:
    explicit PdfFile(const QByteArray& pdf);

    [[nodiscard]] QString path(const QString& name = QStringLiteral("cards.pdf")) const { return m_folder.filePath(name); }
    [[nodiscard]] QString text() const;
    [[nodiscard]] int pages() const;
    /// A page, counted from 1, at 150 dots to the inch.
    [[nodiscard]] QImage raster(int page = 1) const;
    /// What the codes on a page's raster say, sorted.
    [[nodiscard]] QStringList codes(int page = 1) const;

private:
    QTemporaryDir m_folder;
};

/// How much of an image is neither black nor white nor a grey between them, as the edges of letters are.
[[nodiscard]] int colouredPixels(const QImage& image);

/// Its faces are embedded with their letters, and there is no picture and no colour in it.
void expectPlainPdf(const PdfFile& file);

}  // namespace chalk::test
