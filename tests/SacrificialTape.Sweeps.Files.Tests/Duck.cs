using DuckDB.NET.Data;

namespace SacrificialTape.Sweeps.Files.Tests;

/// <summary>DuckDB, a reader of Parquet and CSV that shares no code with the writers.</summary>
internal static class Duck
{
    internal static List<object?[]> Ask(string sql)
    {
        using var connection = new DuckDBConnection("DataSource=:memory:");
        connection.Open();
        using DuckDBCommand command = connection.CreateCommand();
        command.CommandText = sql;
        using DuckDBDataReader reader = command.ExecuteReader();
        var rows = new List<object?[]>();
        while (reader.Read())
        {
            rows.Add([.. Enumerable.Range(0, reader.FieldCount).Select(i => reader.IsDBNull(i) ? null : reader.GetValue(i))]);
        }

        return rows;
    }

    internal static double[][] Columns(string source, int columns)
    {
        List<object?[]> rows = Ask($"SELECT COLUMNS(*)::DOUBLE FROM {source}");
        return [.. Enumerable.Range(0, columns).Select(i => rows.Select(row => (double)row[i]!).ToArray())];
    }
}
