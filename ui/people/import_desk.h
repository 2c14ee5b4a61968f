#pragma once

#include "core/exchange/table_file.h"
#include "core/store/people_reader.h"
#include "ui/common/clock.h"
#include "ui/people/background_work.h"

#include <QObject>
#include <QString>
#include <QStringList>

#include <functional>
#include <memory>
#include <optional>
#include <vector>

class QSettings;

namespace chalk::ui::people {

/// What an import works with. All of it outlives the desk.
struct ImportServices {
    store::Database& database;  ///< of the window's thread; long work opens another connection
    const lifts::Catalogue& catalogue;
    const common::Clock& clock;
    QSettings& settings;
    std::function<QString()> atUtc;
};

/// A file on its way in.
struct ImportFile {
    QString name;
    QByteArray bytes;
    exchange::TableWishes wishes;
    exchange::TableFile file;
    tables::TableLayout layout;
    bool isRecalled = false;  ///< the layout is that of last time
};

/// Takes lists in step by step, without a widget: files, how they are read, who is meant, and in. Everything long goes beside the window's thread.
class ImportDesk : public QObject {
    Q_OBJECT

public:
    enum class Step : std::uint8_t { Files, Columns, People };

    explicit ImportDesk(ImportServices services, QObject* parent = nullptr);

    [[nodiscard]] Step step() const { return m_step; }
    [[nodiscard]] bool isBusy() const { return m_work.isRunning(); }
    [[nodiscard]] const std::vector<ImportFile>& files() const { return m_files; }
    [[nodiscard]] QStringList fileNames() const;
    /// How often a file was looked at, whatever came of it.
    [[nodiscard]] int inspections() const { return m_inspections; }
    [[nodiscard]] const tables::TableContent& content() const { return *m_content; }
    /// There once the files were read.
    [[nodiscard]] const std::optional<store::PeopleProposal>& proposal() const { return m_proposal; }
    [[nodiscard]] const lifts::Catalogue& catalogue() const { return m_services.catalogue; }
    /// What would be taken in as it stands.
    [[nodiscard]] store::PeopleImported preview() const;
    /// The first reason why a file cannot be read as it is laid out, with the file's index.
    [[nodiscard]] std::optional<std::pair<std::size_t, tables::LayoutProblem>> problem() const;
    [[nodiscard]] const BackgroundWork& work() const { return m_work; }

    void addFile(const QString& path);
    void addBytes(const QString& name, const QByteArray& bytes);
    /// Looks at a file again with another encoding or separator.
    void overrule(std::size_t file, const exchange::TableWishes& wishes);
    void setLayout(std::size_t file, const tables::TableLayout& layout);
    /// Reads the files and compares their people with the studio's.
    void read();
    void decidePerson(std::size_t person, store::PersonDecision decision);
    void decideExercise(std::size_t exercise, const lifts::Exercise* chosen);
    /// Takes everything in that has neither fault nor open question.
    void takeIn();
    void stop() { m_work.stop(); }
    /// One step back; from the columns everything is put away.
    void back();
    void clear();

Q_SIGNALS:
    void changed();
    void progressed(int thousandths);
    /// Something could not be done, and why.
    void failed(const QString& reason);
    void imported(const chalk::store::PeopleImported& imported);

private:
    struct Inspected;
    struct Read;
    void inspect(ImportFile file, std::optional<std::size_t> place);
    void keepRead(Read& read);
    void keepInspected(const Inspected& inspected, std::optional<std::size_t> place);

    ImportServices m_services;
    Step m_step = Step::Files;
    int m_inspections = 0;
    std::vector<ImportFile> m_files;
    std::shared_ptr<tables::TableContent> m_content;
    std::optional<store::PeopleProposal> m_proposal;
    std::map<base::ClientId, std::set<base::Date>> m_recorded;
    BackgroundWork m_work;
};

}  // namespace chalk::ui::people
