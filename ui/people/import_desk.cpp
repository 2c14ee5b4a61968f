#include "ui/people/import_desk.h"

#include "ui/people/mapping_memory.h"

#include <QFile>
#include <QFileInfo>

#include <algorithm>

namespace chalk::ui::people {

struct ImportDesk::Inspected {
    ImportFile file;
    QString fault;
};

/// What was read beside the window's thread.
struct ImportDesk::Read {
    std::shared_ptr<tables::TableContent> content = std::make_shared<tables::TableContent>();
    bool isWhole = true;
    std::optional<store::PeopleProposal> proposal;  ///< there where everything was read and compared
    std::map<base::ClientId, std::set<base::Date>> recorded;
    QString fault;

    /// Compares the people with the studio's, over a connection of its own.
    void compare(const store::Access& access, const lifts::Catalogue& catalogue, base::Date today)
    {
        const auto database = store::Database::open(access, store::OpenMode::MustExist);
        if (!database) {
            fault = database.error().message;
            return;
        }
        store::PeopleReader reader(**database);
        auto proposed = reader.proposal(*content, catalogue, today);
        auto days = reader.recordedDays();
        if (!proposed || !days) {
            fault = proposed ? days.error().message : proposed.error().message;
            return;
        }
        proposal = *std::move(proposed);
        recorded = *std::move(days);
    }
};

ImportDesk::ImportDesk(ImportServices services, QObject* parent) : QObject(parent), m_services(std::move(services)), m_content(std::make_shared<tables::TableContent>())
{
    connect(&m_work, &BackgroundWork::progressed, this, &ImportDesk::progressed);
}

QStringList ImportDesk::fileNames() const
{
    QStringList names;
    for (const ImportFile& file : m_files) {
        names.append(file.name);
    }
    return names;
}

store::PeopleImported ImportDesk::preview() const
{
    return m_proposal ? store::previewOf(m_proposal->people, m_recorded) : store::PeopleImported();
}

std::optional<std::pair<std::size_t, tables::LayoutProblem>> ImportDesk::problem() const
{
    for (std::size_t i = 0; i < m_files.size(); ++i) {
        const auto problem = m_files[i].file.kind == exchange::TableKind::Table ? tables::problemOf(m_files[i].layout) : std::nullopt;
        if (problem) {
            return std::pair(i, *problem);
        }
    }
    return std::nullopt;
}

void ImportDesk::addFile(const QString& path)
{
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly)) {
        Q_EMIT failed(tr("%1 cannot be read: %2").arg(path, file.errorString()));
        return;
    }
    addBytes(QFileInfo(path).fileName(), file.readAll());
}

void ImportDesk::addBytes(const QString& name, const QByteArray& bytes)
{
    const auto unit = store::PeopleReader(m_services.database).usualUnit();
    exchange::TableWishes wishes;
    wishes.usualUnit = unit.value_or(base::MassUnit::Kilogram);
    inspect({name, bytes, wishes, {}, {}, false}, std::nullopt);
}

void ImportDesk::overrule(std::size_t index, const exchange::TableWishes& wishes)
{
    ImportFile file = m_files[index];
    file.wishes = wishes;
    inspect(std::move(file), index);
}

void ImportDesk::inspect(ImportFile file, std::optional<std::size_t> place)
{
    auto inspected = std::make_shared<Inspected>();
    inspected->file = std::move(file);
    m_work.start(
        [inspected](const BackgroundWork::Told& told) {
            auto read = exchange::inspectTable(inspected->file.bytes, inspected->file.wishes, told);
            if (read) {
                inspected->file.file = *std::move(read);
                inspected->file.layout = inspected->file.file.layout;
            } else if (!read.error().reason.empty()) {
                inspected->fault = QString::fromStdString(exchange::textOf(read.error()));
            } else {
                inspected->fault = ImportDesk::tr("stopped: nothing of it was read");
            }
        },
        [this, inspected, place] { keepInspected(*inspected, place); });
    Q_EMIT changed();
}

void ImportDesk::keepInspected(const Inspected& inspected, std::optional<std::size_t> place)
{
    ++m_inspections;
    if (!inspected.fault.isEmpty()) {
        Q_EMIT failed(tr("%1: %2").arg(inspected.file.name, inspected.fault));
        Q_EMIT changed();
        return;
    }
    ImportFile file = inspected.file;
    file.isRecalled = recallMapping(m_services.settings, file.file, file.layout);
    if (place) {
        m_files[*place] = std::move(file);
    } else {
        m_files.push_back(std::move(file));
    }
    m_step = Step::Columns;
    Q_EMIT changed();
}

void ImportDesk::setLayout(std::size_t file, const tables::TableLayout& layout)
{
    m_files[file].layout = layout;
    Q_EMIT changed();
}

void ImportDesk::read()
{
    if (problem() || m_files.empty()) {
        return;
    }
    auto read = std::make_shared<Read>();
    m_work.start(
        [read, files = m_files, access = m_services.database.access(), &catalogue = m_services.catalogue,
         today = m_services.clock.today()](const BackgroundWork::Told& told) {
            for (std::size_t i = 0; i < files.size() && read->isWhole; ++i) {
                read->isWhole = exchange::readTable(files[i].file, files[i].layout, *read->content, static_cast<int>(i), today, told);
            }
            if (read->isWhole) {
                read->compare(access, catalogue, today);
            }
        },
        [this, read] { keepRead(*read); });
    Q_EMIT changed();
}

void ImportDesk::keepRead(Read& read)
{
    if (read.proposal) {
        m_content = read.content;
        m_proposal = std::move(read.proposal);
        m_recorded = std::move(read.recorded);
        m_proposal->people.source = fileNames().join(QStringLiteral(", ")).toStdString();
        m_step = Step::People;
        for (const ImportFile& file : m_files) {
            rememberMapping(m_services.settings, file.file, file.layout);
        }
    } else if (read.isWhole) {
        Q_EMIT failed(read.fault);
    }
    Q_EMIT changed();
}

void ImportDesk::decidePerson(std::size_t person, store::PersonDecision decision)
{
    m_proposal->people.persons[person] = decision;
    Q_EMIT changed();
}

void ImportDesk::decideExercise(std::size_t exercise, const lifts::Exercise* chosen)
{
    m_proposal->people.exercises[exercise] = chosen;
    Q_EMIT changed();
}

void ImportDesk::takeIn()
{
    if (!m_proposal) {
        return;
    }
    auto result = std::make_shared<store::Result<store::PeopleImported>>(store::storeError(store::StoreError::Kind::Other, QString()));
    m_work.start(
        [result, content = m_content, people = m_proposal->people, access = m_services.database.access(), author = m_services.database.author(),
         atUtc = m_services.atUtc()](const BackgroundWork::Told& told) {
            auto database = store::Database::open(access, store::OpenMode::MustExist);
            if (!database) {
                *result = tl::make_unexpected(database.error());
                return;
            }
            (*database)->setAuthor(author);
            *result = store::importPeople(**database, people, atUtc, store::randomSessionCode, [&told](int done, int of) { return told(done * 1000 / std::max(of, 1)); });
        },
        [this, result] {
            if (*result) {
                clear();
                Q_EMIT imported(**result);
                return;
            }
            Q_EMIT failed(result->error().message);
            Q_EMIT changed();
        });
    Q_EMIT changed();
}

void ImportDesk::back()
{
    if (m_step != Step::People) {
        clear();
        return;
    }
    m_step = Step::Columns;
    m_proposal.reset();
    Q_EMIT changed();
}

void ImportDesk::clear()
{
    m_step = Step::Files;
    m_files.clear();
    m_proposal.reset();
    m_content = std::make_shared<tables::TableContent>();
    Q_EMIT changed();
}

}  // namespace chalk::ui::people
