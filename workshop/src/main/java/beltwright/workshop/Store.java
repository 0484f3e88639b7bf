package beltwright.workshop;

import beltwright.quantity.Refusal;
import beltwright.workshop.document.Codec;
import beltwright.workshop.document.Document;
import beltwright.workshop.document.Fingerprint;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Function;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.FlywayException;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteDataSource;

/// Where documents are kept: canonical text with its SHA-256, in SQLite or PostgreSQL by the same statements.
///
/// Nothing is held open between calls. What was saved when a call returns survives a kill. The command line opens a
/// store on every call, so opening one whose schema is current costs one query and loads no library but the driver.
public final class Store {
    private static final String NEWEST_SCHEMA = "1";
    private static final int BUSY_MILLISECONDS = 10_000;
    private static final String SCHEMA = "select version from schema_history where version = '" + NEWEST_SCHEMA + "'";
    private static final String ROWS = "select id, type, sha256, canonical_text from document";
    private static final String SAVE = """
            insert into document (id, type, sha256, canonical_text) values (?, ?, ?, ?)
            on conflict (id) do update set
                type = excluded.type, sha256 = excluded.sha256, canonical_text = excluded.canonical_text""";

    private final String name;
    private final DataSource source;

    private Store(String name, DataSource source) {
        this.name = name;
        this.source = source;
        try {
            if (!current()) {
                migrate();
            }
        } catch (FlywayException e) {
            if (!current()) { // or else another process made the same store at the same moment
                throw unusable(e);
            }
        }
    }

    /// Opens the store in this file, and makes it where there is none.
    ///
    /// @throws Refusal if the file cannot be made or is no store
    public static Store open(Path file) {
        var folder = file.toAbsolutePath().getParent();
        if (folder == null || !Files.isDirectory(folder) || Files.isDirectory(file)) {
            throw new Refusal(
                    file.toString(),
                    "no store can be made here",
                    "a file in an existing folder",
                    "make the folder first");
        }
        var config = new SQLiteConfig();
        config.enforceForeignKeys(true);
        config.setJournalMode(SQLiteConfig.JournalMode.WAL);
        config.setSynchronous(SQLiteConfig.SynchronousMode.FULL);
        config.setTransactionMode(SQLiteConfig.TransactionMode.IMMEDIATE);
        config.setBusyTimeout(BUSY_MILLISECONDS);
        var source = new SQLiteDataSource(config);
        source.setUrl("jdbc:sqlite:" + file.toAbsolutePath());
        return new Store(file.toString(), source);
    }

    /// Opens a store in a database that is there already, such as PostgreSQL.
    public static Store on(String name, DataSource source) {
        return new Store(name, source);
    }

    private boolean current() {
        try (var connection = source.getConnection();
                var query = connection.prepareStatement(SCHEMA);
                var found = query.executeQuery()) {
            return found.next();
        } catch (SQLException e) {
            return false; // no such table yet; a file that is no database is refused by the migration that follows
        }
    }

    private void migrate() {
        Flyway.configure()
                .dataSource(source)
                .table("schema_history")
                .locations("classpath:beltwright/workshop/migrations")
                .load()
                .migrate();
    }

    /// {@return every document by its id, as typed}
    ///
    /// @throws Refusal if a row was damaged
    public SortedMap<String, Document> documents() {
        return documents(rows());
    }

    private SortedMap<String, Document> documents(List<Row> rows) {
        var documents = new TreeMap<String, Document>();
        for (var row : rows) {
            documents.put(row.id, row.document(name));
        }
        return documents;
    }

    /// Saves all of these, or none. A document with an id that is kept already takes the other's place.
    public void save(Collection<? extends Document> documents) {
        transaction(connection -> List.copyOf(documents));
    }

    /// Looks at what is kept and saves what follows from it, with nobody changing anything in between. What is not
    /// committed when the connection closes is gone.
    ///
    /// @return what was saved
    public List<Document> change(Function<SortedMap<String, Document>, List<Document>> follows) {
        return transaction(connection -> follows.apply(documents(rows(connection))));
    }

    /// What is to be saved, found out while nobody else can change anything.
    private interface ToSave {
        List<Document> in(Connection connection) throws SQLException;
    }

    private List<Document> transaction(ToSave toSave) {
        try (var connection = source.getConnection()) {
            connection.setTransactionIsolation(Connection.TRANSACTION_SERIALIZABLE);
            connection.setAutoCommit(false);
            var documents = toSave.in(connection);
            save(connection, documents);
            connection.commit();
            return documents;
        } catch (SQLException e) {
            throw unusable(e);
        }
    }

    private static void save(Connection connection, List<Document> documents) throws SQLException {
        try (var insert = connection.prepareStatement(SAVE)) {
            for (var document : documents) {
                var text = Codec.write(document);
                insert.setString(1, document.id());
                insert.setString(2, document.type().toString());
                insert.setString(3, Fingerprint.of(text));
                insert.setString(4, text);
                insert.addBatch();
            }
            insert.executeBatch();
        }
    }

    /// {@return one fingerprint of everything kept: SHA-256 over the lines `type id sha256`, sorted}
    public String contentHash() {
        var lines = new StringBuilder();
        rows().stream()
                .map(row -> row.type + " " + row.id + " " + row.sha256 + "\n")
                .sorted()
                .forEach(lines::append);
        return Fingerprint.of(lines.toString());
    }

    /// {@return how many documents were read back and found to be what was saved}
    ///
    /// @throws Refusal naming the first that is not
    public int verify() {
        return documents().size();
    }

    private List<Row> rows() {
        try (var connection = source.getConnection()) {
            return rows(connection);
        } catch (SQLException e) {
            throw unusable(e);
        }
    }

    private static List<Row> rows(Connection connection) throws SQLException {
        var rows = new ArrayList<Row>();
        try (var query = connection.prepareStatement(ROWS);
                var found = query.executeQuery()) {
            while (found.next()) {
                rows.add(new Row(found.getString(1), found.getString(2), found.getString(3), found.getString(4)));
            }
        }
        return rows;
    }

    private Refusal unusable(Exception e) {
        var said = String.valueOf(e.getMessage());
        return new Refusal(
                name,
                said.contains("SQLITE_NOTADB")
                        ? "is another sort of file"
                        : "cannot be used as a store: "
                                + said.lines().findFirst().orElse(""),
                "a store of this program, or a path where a new one can be made",
                "give another path, or move this file away");
    }

    private record Row(String id, String type, String sha256, String text) {
        Document document(String store) {
            var read = Fingerprint.of(text).equals(sha256) ? Codec.readOne(id, text) : null;
            if (read == null || !read.id().equals(id) || !read.type().toString().equals(type)) {
                throw new Refusal(
                        store,
                        "the text of " + type + " '" + id + "' is not what was saved",
                        "text with the SHA-256 " + sha256,
                        "put back a copy of the store, or import this document again into a new one");
            }
            return read;
        }
    }
}
