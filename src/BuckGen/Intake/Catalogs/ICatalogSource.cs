namespace BuckGen.Intake.Catalogs;

/// <summary>Brings stocks and plastics.</summary>
public interface ICatalogSource
{
    /// <summary>What it is called.</summary>
    string Name { get; }

    /// <summary>A catalog with its own entries on top of another; <see cref="CatalogFile.Read"/> makes one from text.</summary>
    /// <param name="onto">The other catalog.</param>
    Catalog AddTo(Catalog onto);
}
