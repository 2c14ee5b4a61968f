#include "core/exchange/studio_tables_folder.h"

#include "core/exchange/catalogue_json.h"
#include "core/exchange/client_json.h"
#include "tests/support/kept_client.h"
#include "tests/support/small_studio.h"

#include <QDir>
#include <QJsonArray>
#include <QJsonDocument>
#include <QTemporaryDir>

#include <gtest/gtest.h>

#include <set>

namespace chalk::exchange {

namespace {

void expectOwnColumns(const StudioTable& table, std::vector<const char*> numbers, std::set<std::string>& files)
{
    EXPECT_TRUE(files.insert(table.name).second) << table.name;
    std::set<QByteArray> names;
    for (const QByteArray& name : columnNames(table, numbers)) {
        EXPECT_TRUE(names.insert(name).second) << table.name << ": " << name.toStdString() << " is there twice";
    }
    for (const TableColumn& column : table.columns) {
        EXPECT_TRUE(tablesReadme().contains(QLatin1String(column.meaning))) << table.name << "." << column.name;
    }
    if (&table != &studioTable()) {
        numbers.push_back(table.number);
    }
    for (const StudioTable& part : table.parts) {
        expectOwnColumns(part, numbers, files);
    }
}

QJsonObject objectOf(const QByteArray& text)
{
    return QJsonDocument::fromJson(text).object();
}

QByteArray textIn(const QString& name)
{
    QFile file(name);
    EXPECT_TRUE(file.open(QIODevice::ReadOnly)) << name.toStdString();
    return file.readAll();
}

/// The small studio as tables in a folder.
class TablesOnTest {
public:
    TablesOnTest()
    {
        StudioDocument document = test::smallStudio();
        test::addKept(document);
        m_files = writeStudio(document);
        TablesWriter writer(m_folder.path());
        writer.addStudio(objectOf(m_files.at(studioFileName())));
        for (const auto& [name, text] : m_files) {
            if (name != studioFileName()) {
                writer.addClient(objectOf(text));
            }
        }
        EXPECT_TRUE(writer.finish());
    }

    [[nodiscard]] QString file(const char* name) const { return m_folder.filePath(QLatin1String(name)); }
    [[nodiscard]] const StudioFiles& files() const { return m_files; }
    void replace(const char* name, const QByteArray& what, const QByteArray& by) const
    {
        QFile table(file(name));
        ASSERT_TRUE(table.open(QIODevice::ReadWrite));
        QByteArray text = table.readAll();
        ASSERT_TRUE(text.contains(what));
        text.replace(text.indexOf(what), what.size(), by);
        table.resize(0);
        table.seek(0);
        table.write(text);
    }
    /// What is said of the folder; empty where it can be read.
    [[nodiscard]] std::string fault() const
    {
        TablesReader reader(m_folder.path());
        if (const auto studio = reader.studio(); !studio) {
            return studio.error().message().toStdString();
        }
        auto client = reader.nextClient();
        while (client && *client) {
            client = reader.nextClient();
        }
        return client ? std::string() : client.error().message().toStdString();
    }
    [[nodiscard]] QString folder() const { return m_folder.path(); }

private:
    QTemporaryDir m_folder;
    StudioFiles m_files;
};

}  // namespace

TEST(StudioTables, HaveColumnsOfTheirOwnThatTheReadmeExplains)
{
    std::set<std::string> files;
    expectOwnColumns(studioTable(), {}, files);
    expectOwnColumns(clientTable(), {}, files);
    EXPECT_EQ(files.count("sets"), 1U);
}

TEST(StudioTables, AreReadAgainAsTheSameObjects)
{
    const TablesOnTest tables;
    TablesReader reader(tables.folder());
    EXPECT_EQ(reader.studio().value(), objectOf(tables.files().at(studioFileName())));
    for (const auto& [name, text] : tables.files()) {
        if (name != studioFileName()) {
            EXPECT_EQ(reader.nextClient().value().value(), objectOf(text)) << name.toStdString();
        }
    }
    EXPECT_FALSE(reader.nextClient().value());
}

TEST(StudioTables, AreForTheirOwnerOnly)
{
    const TablesOnTest tables;
    for (const char* name : {"clients.csv", "sets.csv", "README.txt"}) {
        EXPECT_EQ(QFile(tables.file(name)).permissions() & (QFile::ReadGroup | QFile::ReadOther | QFile::WriteOther), QFile::Permissions()) << name;
    }
}

TEST(StudioTables, AreTheSameBytesWhereTheLogIsWrittenByItself)
{
    StudioDocument document = test::smallStudio();
    test::addKept(document);
    std::vector<DocumentEvent>& events = document.clients.front().lifts.at(1).events;
    DocumentEvent corrected = events.back();
    corrected.former = {corrected.event, {corrected.event.date, progression::Exposure{0, {}}}};
    DocumentEvent takenBack = events.back();
    takenBack.isTakenBack = true;
    events.insert(events.end(), {corrected, takenBack, {{corrected.event.date, progression::Release{"sound, \"again\""}}, {}}, {{corrected.event.date, progression::Exposure{0, {}}}, {}}, events.front()});
    const QTemporaryDir ofObjects;
    const QTemporaryDir byItself;
    {
        TablesWriter objects(ofObjects.path());
        TablesWriter log(byItself.path());
        objects.addStudio(writtenStudio(document).object);
        log.addStudio(writtenStudio(document).object);
        for (const DocumentClient& client : document.clients) {
            const WrittenObject written = writtenClient(client, document);
            objects.addClient(objectOf(written.text));
            log.addClient(written.object, client.lifts);
        }
        ASSERT_TRUE(objects.finish());
        ASSERT_TRUE(log.finish());
    }
    const QStringList names = QDir(byItself.path()).entryList(QDir::Files);
    EXPECT_EQ(names, QDir(ofObjects.path()).entryList(QDir::Files));
    for (const QString& name : names) {
        EXPECT_EQ(textIn(byItself.filePath(name)), textIn(ofObjects.filePath(name))) << name.toStdString();
    }
    EXPECT_EQ(textIn(byItself.filePath(QStringLiteral("former_events.csv"))).count('\n'), 3) << "the headings, and two versions";
}

TEST(StudioTables, KeepWhatHasNoColumn)
{
    const QTemporaryDir folder;
    const QJsonObject odd{{QStringLiteral("name"), QStringLiteral("Ada, \"Lu\"\r\n")},
                          {QStringLiteral("shoe"), 41.5},
                          {QStringLiteral("clearance"), QJsonObject{{QStringLiteral("state"), QStringLiteral("granted")},
                                                                    {QStringLiteral("reason"), QString()},
                                                                    {QStringLiteral("limits"), QString()},
                                                                    {QStringLiteral("stamp"), 7}}},
                          {QStringLiteral("goal"), QString()},
                          {QStringLiteral("body_mass"), QStringLiteral("heavy")},
                          {QStringLiteral("cautions"), QJsonArray()},
                          {QStringLiteral("sessions"), QJsonArray()},
                          {QStringLiteral("lifts"), QJsonArray()}};
    {
        TablesWriter writer(folder.path());
        writer.addStudio({{QStringLiteral("name"), QStringLiteral("Odd")}, {QStringLiteral("coaches"), QJsonArray()}, {QStringLiteral("equipment"), QJsonArray()}});
        writer.addClient(odd);
        ASSERT_TRUE(writer.finish());
    }
    TablesReader reader(folder.path());
    ASSERT_TRUE(reader.studio());
    EXPECT_EQ(reader.nextClient().value().value(), odd);
}

TEST(StudioTables, AFaultNamesTheFileAndTheLine)
{
    {
        const TablesOnTest tables;
        tables.replace("sets.csv", ",8,", ",eight,");
        EXPECT_EQ(tables.fault(), "sets.csv, line 2, column 1: reps must be a number with a decimal point");
    }
    {
        const TablesOnTest tables;
        tables.replace("sessions.csv", "1,2,", "1,5,");
        EXPECT_EQ(tables.fault().rfind("sessions.csv, line 4", 0), 0U) << "the note before it has two lines: " << tables.fault();
    }
    {
        const TablesOnTest tables;
        tables.replace("lifts.csv", "pattern", "pattering");
        EXPECT_EQ(tables.fault(), "lifts.csv, line 1, column 1: pattering is no column of this table");
    }
    {
        const TablesOnTest tables;
        ASSERT_TRUE(QFile::remove(tables.file("events.csv")));
        EXPECT_EQ(tables.fault().rfind("events.csv", 0), 0U) << tables.fault();
    }
}

TEST(StudioTables, AFaultOfAValueIsPlacedInItsRow)
{
    const TablesOnTest tables;
    TablesReader reader(tables.folder());
    ASSERT_TRUE(reader.studio());
    ASSERT_TRUE(reader.nextClient());
    EXPECT_EQ(reader.placed({"sessions[1].state", "is unknown"}).message().toStdString(), "sessions.csv, line 4, column 1: state is unknown");
    EXPECT_EQ(reader.placed({"clearance.limits", "is too long"}).message().toStdString(), "clients.csv, line 2, column 1: clearance_limits is too long");
    EXPECT_EQ(reader.placed({"lifts[1].events[1].sets[1].load", "is too much"}).message().toStdString(), "sets.csv, line 3, column 1: load is too much");
    EXPECT_EQ(reader.placed({"forms[0].detail.sex", "is unknown"}).message().toStdString(), "forms.csv, line 2, column 1: detail is unknown");
}

}  // namespace chalk::exchange
