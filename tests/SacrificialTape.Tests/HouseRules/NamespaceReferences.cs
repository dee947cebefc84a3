using System.Collections.Immutable;
using System.Reflection;
using System.Reflection.Metadata;
using System.Reflection.PortableExecutable;

namespace SacrificialTape.Tests.HouseRules;

/// <summary>
/// Reads a compiled assembly and tells, for each type, the namespaces of all types it refers to: base type, interfaces,
/// constraints, fields, signatures, locals, attributes with their arguments, and every token in its method bodies.
/// </summary>
/// <remarks>What a decoded type comes to is one bit: whether it is System.Type, which attributes must know.</remarks>
internal sealed class NamespaceReferences : ISignatureTypeProvider<bool, bool>, ICustomAttributeTypeProvider<bool>, IDisposable
{
    private readonly PEReader file;
    private readonly MetadataReader reader;
    private readonly HashSet<(string Type, string Namespace)> found = [];
    private string current = string.Empty;

    private readonly string house;

    internal NamespaceReferences(Assembly assembly, string house)
    {
        this.house = house;
        this.file = new PEReader(File.OpenRead(assembly.Location));
        this.reader = this.file.GetMetadataReader();
    }

    /// <summary>Pairs of a type of the assembly (namespace and outermost name) and a namespace it refers to.</summary>
    internal IReadOnlyCollection<(string Type, string Namespace)> Read()
    {
        foreach (TypeDefinitionHandle handle in this.reader.TypeDefinitions)
        {
            TypeDefinition type = this.reader.GetTypeDefinition(handle);
            TypeDefinition outer = this.Outermost(handle);
            string own = this.reader.GetString(outer.Namespace);
            if (own != this.house && !own.StartsWith(this.house + ".", StringComparison.Ordinal))
            {
                continue; // made by the compiler or the test platform
            }

            this.current = own + "." + this.reader.GetString(outer.Name);
            this.Visit(handle);
            this.Visit(type.BaseType);
            this.Attributes(type.GetCustomAttributes());
            this.Constraints(type.GetGenericParameters());
            foreach (InterfaceImplementationHandle one in type.GetInterfaceImplementations())
            {
                this.Visit(this.reader.GetInterfaceImplementation(one).Interface);
            }

            foreach (FieldDefinitionHandle one in type.GetFields())
            {
                this.Visit(one);
                this.Attributes(this.reader.GetFieldDefinition(one).GetCustomAttributes());
            }

            foreach (PropertyDefinitionHandle one in type.GetProperties())
            {
                PropertyDefinition property = this.reader.GetPropertyDefinition(one);
                property.DecodeSignature(this, false);
                this.Attributes(property.GetCustomAttributes());
            }

            foreach (MethodDefinitionHandle one in type.GetMethods())
            {
                this.Method(this.reader.GetMethodDefinition(one));
            }
        }

        return this.found;
    }

    public void Dispose() => this.file.Dispose();

    public bool GetArrayType(bool elementType, ArrayShape shape) => false;

    public bool GetByReferenceType(bool elementType) => false;

    public bool GetFunctionPointerType(MethodSignature<bool> signature) => false;

    public bool GetGenericInstantiation(bool genericType, ImmutableArray<bool> typeArguments) => false;

    public bool GetGenericMethodParameter(bool genericContext, int index) => false;

    public bool GetGenericTypeParameter(bool genericContext, int index) => false;

    public bool GetModifiedType(bool modifier, bool unmodifiedType, bool isRequired) => false;

    public bool GetPinnedType(bool elementType) => false;

    public bool GetPointerType(bool elementType) => false;

    public bool GetPrimitiveType(PrimitiveTypeCode typeCode) => false;

    public bool GetSZArrayType(bool elementType) => false;

    public bool GetSystemType() => true;

    public bool IsSystemType(bool type) => type;

    public PrimitiveTypeCode GetUnderlyingEnumType(bool type) => PrimitiveTypeCode.Int32;

    public bool GetTypeFromSerializedName(string? name)
    {
        if (name is null)
        {
            return false; // an attribute whose type argument is null
        }

        string full = name.Split(',')[0].Split('+')[0];
        int dot = full.LastIndexOf('.');
        this.found.Add((this.current, dot < 0 ? string.Empty : full[..dot]));
        return false;
    }

    public bool GetTypeFromDefinition(MetadataReader reader, TypeDefinitionHandle handle, byte rawTypeKind)
    {
        this.Visit(handle);
        return false;
    }

    public bool GetTypeFromReference(MetadataReader reader, TypeReferenceHandle handle, byte rawTypeKind)
    {
        this.Visit(handle);
        TypeReference type = reader.GetTypeReference(handle);
        return reader.StringComparer.Equals(type.Name, "Type") && reader.StringComparer.Equals(type.Namespace, "System");
    }

    public bool GetTypeFromSpecification(MetadataReader reader, bool genericContext, TypeSpecificationHandle handle, byte rawTypeKind)
    {
        this.Visit(handle);
        return false;
    }

    private void Method(MethodDefinition method)
    {
        method.DecodeSignature(this, false);
        this.Attributes(method.GetCustomAttributes());
        this.Constraints(method.GetGenericParameters());
        foreach (ParameterHandle one in method.GetParameters())
        {
            this.Attributes(this.reader.GetParameter(one).GetCustomAttributes());
        }

        if (method.RelativeVirtualAddress == 0)
        {
            return;
        }

        MethodBodyBlock body = this.file.GetMethodBody(method.RelativeVirtualAddress);
        this.Visit(body.LocalSignature);
        foreach (ExceptionRegion region in body.ExceptionRegions)
        {
            this.Visit(region.CatchType);
        }

        foreach (Instruction instruction in Instruction.Read(body.GetILBytes()!))
        {
            if (instruction.Token != 0)
            {
                this.Visit((EntityHandle)System.Reflection.Metadata.Ecma335.MetadataTokens.Handle(instruction.Token));
            }
        }
    }

    private void Visit(EntityHandle handle)
    {
        if (handle.IsNil)
        {
            return;
        }

        switch (handle.Kind)
        {
            case HandleKind.TypeDefinition:
                this.found.Add((this.current, this.reader.GetString(this.Outermost((TypeDefinitionHandle)handle).Namespace)));
                break;
            case HandleKind.TypeReference:
                TypeReference reference = this.reader.GetTypeReference((TypeReferenceHandle)handle);
                while (reference.ResolutionScope.Kind == HandleKind.TypeReference)
                {
                    reference = this.reader.GetTypeReference((TypeReferenceHandle)reference.ResolutionScope);
                }

                this.found.Add((this.current, this.reader.GetString(reference.Namespace)));
                break;
            case HandleKind.TypeSpecification:
                this.reader.GetTypeSpecification((TypeSpecificationHandle)handle).DecodeSignature(this, false);
                break;
            case HandleKind.FieldDefinition:
                FieldDefinition field = this.reader.GetFieldDefinition((FieldDefinitionHandle)handle);
                this.Visit(field.GetDeclaringType());
                field.DecodeSignature(this, false);
                break;
            case HandleKind.MethodDefinition:
                this.Visit(this.reader.GetMethodDefinition((MethodDefinitionHandle)handle).GetDeclaringType());
                break;
            case HandleKind.MemberReference:
                MemberReference member = this.reader.GetMemberReference((MemberReferenceHandle)handle);
                this.Visit(member.Parent);
                if (member.GetKind() == MemberReferenceKind.Field)
                {
                    member.DecodeFieldSignature(this, false);
                }
                else
                {
                    member.DecodeMethodSignature(this, false);
                }

                break;
            case HandleKind.MethodSpecification:
                MethodSpecification specification = this.reader.GetMethodSpecification((MethodSpecificationHandle)handle);
                this.Visit(specification.Method);
                specification.DecodeSignature(this, false);
                break;
            case HandleKind.StandaloneSignature:
                StandaloneSignature signature = this.reader.GetStandaloneSignature((StandaloneSignatureHandle)handle);
                if (signature.GetKind() == StandaloneSignatureKind.LocalVariables)
                {
                    signature.DecodeLocalSignature(this, false);
                }
                else
                {
                    signature.DecodeMethodSignature(this, false);
                }

                break;
            default:
                throw new NotSupportedException($"A token of kind {handle.Kind} in {this.current}.");
        }
    }

    private void Attributes(CustomAttributeHandleCollection attributes)
    {
        foreach (CustomAttributeHandle one in attributes)
        {
            CustomAttribute attribute = this.reader.GetCustomAttribute(one);
            this.Visit(attribute.Constructor);
            attribute.DecodeValue(this);
        }
    }

    private void Constraints(GenericParameterHandleCollection parameters)
    {
        foreach (GenericParameterHandle one in parameters)
        {
            foreach (GenericParameterConstraintHandle constraint in this.reader.GetGenericParameter(one).GetConstraints())
            {
                this.Visit(this.reader.GetGenericParameterConstraint(constraint).Type);
            }
        }
    }

    private TypeDefinition Outermost(TypeDefinitionHandle handle)
    {
        TypeDefinition type = this.reader.GetTypeDefinition(handle);
        while (!type.GetDeclaringType().IsNil)
        {
            type = this.reader.GetTypeDefinition(type.GetDeclaringType());
        }

        return type;
    }
}
