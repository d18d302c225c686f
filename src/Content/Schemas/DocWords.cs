using System.Reflection;
using System.Text.Json.Schema;
using System.Text.RegularExpressions;
using System.Xml.Linq;

namespace MomentArm.Content;

/// <summary>The documentation of the file records, read from the files the compiler writes beside each room.</summary>
internal sealed partial class DocWords
{
    private readonly Dictionary<Assembly, Dictionary<string, XElement>> rooms = [];

    /// <summary>What a place in a schema is for: the property's words, else the type's, else null.</summary>
    internal string? Of(JsonSchemaExporterContext context) =>
        context.PropertyInfo is { AttributeProvider: MemberInfo { DeclaringType: { } type } member }
            ? OfProperty(type, member.Name) ?? OfType(Nullable.GetUnderlyingType(context.TypeInfo.Type) ?? context.TypeInfo.Type)
            : OfType(Nullable.GetUnderlyingType(context.TypeInfo.Type) ?? context.TypeInfo.Type);

    private string? OfProperty(Type type, string name) =>
        Member(type, $"P:{type.FullName}.{name}")?.Element("summary") is { } summary
            ? Plain(summary, type)
            : Member(type, $"T:{type.FullName}")?.Elements("param").FirstOrDefault(p => (string?)p.Attribute("name") == name) is { } parameter
                ? Plain(parameter, type)
                : null;

    private string? OfType(Type type) =>
        type.Namespace?.StartsWith("MomentArm.", StringComparison.Ordinal) == true
        && Member(type, $"T:{type.FullName}")?.Element("summary") is { } summary
            ? Plain(summary, type)
            : null;

    private XElement? Member(Type type, string id) => Room(type.Assembly).GetValueOrDefault(id);

    private Dictionary<string, XElement> Room(Assembly room)
    {
        if (rooms.TryGetValue(room, out var known))
            return known;
        var path = Path.ChangeExtension(room.Location, ".xml");
        if (!File.Exists(path))
            throw new FileNotFoundException($"The documentation {Path.GetFileName(path)} is not beside the program; build it again.");
        return rooms[room] = XDocument.Load(path).Descendants("member").ToDictionary(m => (string)m.Attribute("name")!);
    }

    /// <summary>The text alone; "See X." becomes what X says.</summary>
    private string Plain(XElement element, Type type)
    {
        if (element.Elements("see").Select(s => (string?)s.Attribute("cref")).FirstOrDefault() is { } target
            && Spaces().Replace(element.Value, "") is "See." && Referred(type, target) is { } words)
            return words;
        var text = string.Concat(element.Nodes().Select(n => n switch
        {
            XText plain => plain.Value,
            XElement see when (string?)see.Attribute("cref") is { } cref => cref[(cref.LastIndexOf('.') + 1)..],
            XElement other => other.Value,
            _ => "",
        }));
        return Spaces().Replace(text, " ").Trim();
    }

    private string? Referred(Type type, string target)
    {
        var owner = target[2..target.LastIndexOf('.')];
        var name = target[(target.LastIndexOf('.') + 1)..];
        var found = type.Assembly.GetReferencedAssemblies()
            .Where(a => a.Name!.StartsWith("MomentArm.", StringComparison.Ordinal))
            .Select(a => Assembly.Load(a).GetType(owner)).FirstOrDefault(t => t is not null);
        return found is null ? null : OfProperty(found, name);
    }

    [GeneratedRegex(@"\s+")]
    private static partial Regex Spaces();
}
