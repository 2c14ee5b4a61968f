#pragma once

#include "ui/print/paper.h"
#include "ui/print/sheet.h"

#include <QString>

#include <vector>

namespace chalk::ui::print {

/// Text that flows over as many pages as it takes: headings, paragraphs, lines to write on, boxes to tick. Every page has a head and its
/// number in the foot.
class PageFlow {
public:
    /// `head` stands small at the top of every page: whose paper it is.
    PageFlow(PaperSize paper, QString head);

    void title(const QString& text);
    /// Stays on a page with what comes after it.
    void heading(const QString& text);
    void paragraph(const QString& text);
    /// A name at the left, bold, and its text beside it; the text breaks as often as it has to.
    void entry(const QString& name, const QString& text);
    /// A question and, in a column at the right of its first line, a short answer; `more` stands below it and starts on the same page.
    void question(const QString& text, const QString& answer, const QString& more);
    /// A box to tick with its words.
    void tick(const QString& text);
    /// A line to write on with a few words below it, which break as often as they have to; several beside each other.
    void signatures(const QStringList& below);
    void gap(double millimetres);

    /// All pages, numbered.
    [[nodiscard]] std::vector<Sheet> sheets() const;

private:
    [[nodiscard]] double left() const;
    [[nodiscard]] double width() const;
    [[nodiscard]] double bottom() const;
    Sheet& page(double needed);
    void newPage();
    void lines(const QStringList& broken, const QFont& font, double x, double lineHeight);

    PaperSize m_paper;
    QString m_head;
    std::vector<Sheet> m_sheets;
    double m_y = 0;
};

}  // namespace chalk::ui::print
