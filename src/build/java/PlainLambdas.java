import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.objectweb.asm.ClassReader;
import org.objectweb.asm.ClassVisitor;
import org.objectweb.asm.ClassWriter;
import org.objectweb.asm.Handle;
import org.objectweb.asm.Label;
import org.objectweb.asm.MethodVisitor;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.Type;

/**
 * Gives the lambdas of compiled classes classes of their own, in place, and writes down what records
 * have by themselves (equals, hashCode, toString). Java makes either when the program first gets
 * there; a check gets to some six hundred, and that is a good part of how long it takes to start.
 * What this does not know how to write down stays as it was.
 *
 * <p>Argument: the folder of the compiled classes.
 */
public final class PlainLambdas {
  private static final int API = Opcodes.ASM9;
  private static final String RECORDS = "java/lang/runtime/ObjectMethods";
  private static final String FACTORY = "java/lang/invoke/LambdaMetafactory";

  /** What is known of a class before any is written. */
  private record Known(int access, String above, Map<String, Integer> methods) {}

  /** A lambda: what it implements, and by which method. */
  private record Lambda(
      String name, Type taken, String method, Type erased, Handle by, Type instantiated) {}

  /**
   * What Java makes for a record at run time: {@code equals}, {@code hashCode} or {@code toString},
   * with the class, the names and the fields it is made of. The same answers, written down.
   */
  private record OfRecord(String method, String type, Object[] of) {
    private static final String STATIC_TEXT = "(Ljava/lang/Object;)Ljava/lang/String;";

    void write(ClassVisitor into, Type self) {
      int access = Opcodes.ACC_PRIVATE | Opcodes.ACC_STATIC | Opcodes.ACC_SYNTHETIC;
      MethodVisitor code = into.visitMethod(access, "plain$" + method, type, null, null);
      code.visitCode();
      switch (method) {
        case "equals" -> equal(code, self);
        case "hashCode" -> hash(code);
        case "toString" -> text(code, self);
        default -> throw new IllegalStateException(method);
      }
      code.visitMaxs(6, 3);
      code.visitEnd();
    }

    private static void get(MethodVisitor code, int local, Handle field) {
      code.visitVarInsn(Opcodes.ALOAD, local);
      code.visitFieldInsn(
          Opcodes.GETFIELD, field.getOwner(), field.getName(), field.getDesc());
    }

    private void equal(MethodVisitor code, Type self) {
      Label other = new Label();
      Label alike = new Label();
      Label differs = new Label();
      code.visitVarInsn(Opcodes.ALOAD, 0);
      code.visitVarInsn(Opcodes.ALOAD, 1);
      code.visitJumpInsn(Opcodes.IF_ACMPNE, other);
      code.visitInsn(Opcodes.ICONST_1);
      code.visitInsn(Opcodes.IRETURN);
      code.visitLabel(other);
      code.visitFrame(Opcodes.F_SAME, 0, null, 0, null);
      code.visitVarInsn(Opcodes.ALOAD, 1);
      code.visitTypeInsn(Opcodes.INSTANCEOF, self.getInternalName());
      code.visitJumpInsn(Opcodes.IFNE, alike);
      code.visitInsn(Opcodes.ICONST_0);
      code.visitInsn(Opcodes.IRETURN);
      code.visitLabel(alike);
      code.visitFrame(Opcodes.F_SAME, 0, null, 0, null);
      code.visitVarInsn(Opcodes.ALOAD, 1);
      code.visitTypeInsn(Opcodes.CHECKCAST, self.getInternalName());
      code.visitVarInsn(Opcodes.ASTORE, 2);
      for (int i = 2; i < of.length; i++) {
        Handle field = (Handle) of[i];
        get(code, 0, field);
        get(code, 2, field);
        same(code, field.getDesc(), differs);
      }
      code.visitInsn(Opcodes.ICONST_1);
      code.visitInsn(Opcodes.IRETURN);
      code.visitLabel(differs);
      code.visitFrame(Opcodes.F_APPEND, 1, new Object[] {self.getInternalName()}, 0, null);
      code.visitInsn(Opcodes.ICONST_0);
      code.visitInsn(Opcodes.IRETURN);
    }

    private static void same(MethodVisitor code, String type, Label differs) {
      switch (type.charAt(0)) {
        case 'Z', 'B', 'C', 'S', 'I' -> code.visitJumpInsn(Opcodes.IF_ICMPNE, differs);
        case 'J', 'F', 'D' -> {
          String two = "(" + type + type + ")I";
          code.visitMethodInsn(Opcodes.INVOKESTATIC, BOXES.get(type), "compare", two, false);
          code.visitJumpInsn(Opcodes.IFNE, differs);
        }
        default -> {
          String two = "(Ljava/lang/Object;Ljava/lang/Object;)Z";
          code.visitMethodInsn(Opcodes.INVOKESTATIC, "java/util/Objects", "equals", two, false);
          code.visitJumpInsn(Opcodes.IFEQ, differs);
        }
      }
    }

    private void hash(MethodVisitor code) {
      code.visitInsn(Opcodes.ICONST_0);
      for (int i = 2; i < of.length; i++) {
        Handle field = (Handle) of[i];
        String type = field.getDesc();
        boolean plain = Type.getType(type).getSort() < Type.ARRAY;
        code.visitIntInsn(Opcodes.BIPUSH, 31);
        code.visitInsn(Opcodes.IMUL);
        get(code, 0, field);
        String in = plain ? BOXES.get(type) : "java/util/Objects";
        String one = "(" + (plain ? type : "Ljava/lang/Object;") + ")I";
        code.visitMethodInsn(Opcodes.INVOKESTATIC, in, "hashCode", one, false);
        code.visitInsn(Opcodes.IADD);
      }
      code.visitInsn(Opcodes.IRETURN);
    }

    private void text(MethodVisitor code, Type self) {
      String builder = "java/lang/StringBuilder";
      code.visitTypeInsn(Opcodes.NEW, builder);
      code.visitInsn(Opcodes.DUP);
      code.visitMethodInsn(Opcodes.INVOKESPECIAL, builder, "<init>", "()V", false);
      code.visitLdcInsn(self);
      String name = "()Ljava/lang/String;";
      code.visitMethodInsn(
          Opcodes.INVOKEVIRTUAL, "java/lang/Class", "getSimpleName", name, false);
      append(code, "java/lang/String");
      String[] names = ((String) of[1]).split(";");
      for (int i = 2; i < of.length; i++) {
        Handle field = (Handle) of[i];
        code.visitLdcInsn((i == 2 ? "[" : ", ") + names[i - 2] + "=");
        append(code, "java/lang/String");
        get(code, 0, field);
        Type type = Type.getType(field.getDesc());
        String text = STATIC_TEXT;
        if (type.getSort() < Type.ARRAY) {
          boolean small = type.getSort() == Type.BYTE || type.getSort() == Type.SHORT;
          text = "(" + (small ? "I" : field.getDesc()) + ")Ljava/lang/String;";
        }
        code.visitMethodInsn(Opcodes.INVOKESTATIC, "java/lang/String", "valueOf", text, false);
        append(code, "java/lang/String");
      }
      code.visitLdcInsn(of.length == 2 ? "[]" : "]");
      append(code, "java/lang/String");
      code.visitMethodInsn(Opcodes.INVOKEVIRTUAL, builder, "toString", name, false);
      code.visitInsn(Opcodes.ARETURN);
    }

    private static void append(MethodVisitor code, String type) {
      String one = "(L" + type + ";)Ljava/lang/StringBuilder;";
      code.visitMethodInsn(
          Opcodes.INVOKEVIRTUAL, "java/lang/StringBuilder", "append", one, false);
    }
  }

  /** Thrown where a lambda is better left alone. */
  private static final class LeftAlone extends RuntimeException {
    private static final long serialVersionUID = 1;

    LeftAlone(String why) {
      super(why);
    }
  }

  private final Map<String, Known> known = new HashMap<>();
  private final Map<Path, byte[]> written = new HashMap<>();

  /** Private methods that a lambda's class calls, as owner.name+descriptor. */
  private final Set<String> opened = new HashSet<>();

  private int made;
  private int left;

  private PlainLambdas() {}

  public static void main(String[] arguments) throws IOException {
    Path folder = Path.of(arguments[0]);
    List<Path> files;
    try (Stream<Path> all = Files.walk(folder)) {
      files = all.filter(f -> f.toString().endsWith(".class")).sorted().toList();
    }
    PlainLambdas lambdas = new PlainLambdas();
    Map<Path, byte[]> classes = new HashMap<>();
    for (Path file : files) {
      classes.put(file, Files.readAllBytes(file));
      lambdas.learn(classes.get(file));
    }
    for (Path file : files) {
      lambdas.replace(folder, file, classes.get(file));
    }
    for (Path file : files) {
      lambdas.open(file, classes.get(file));
    }
    for (Map.Entry<Path, byte[]> one : lambdas.written.entrySet()) {
      if (!Arrays.equals(classes.get(one.getKey()), one.getValue())) {
        Files.write(one.getKey(), one.getValue());
      }
    }
    if (Boolean.getBoolean("outshop.lambdas.count")) {
      System.out.println(lambdas.made + " lambdas have classes, " + lambdas.left + " were left");
    }
  }

  private void learn(byte[] bytes) {
    Map<String, Integer> methods = new HashMap<>();
    ClassReader reader = new ClassReader(bytes);
    reader.accept(
        new ClassVisitor(API) {
          @Override
          public MethodVisitor visitMethod(
              int access, String name, String descriptor, String signature, String[] thrown) {
            methods.put(name + descriptor, access);
            return null;
          }
        },
        ClassReader.SKIP_CODE | ClassReader.SKIP_DEBUG);
    known.put(
        reader.getClassName(), new Known(reader.getAccess(), reader.getSuperName(), methods));
  }

  /** Puts a class in the place of each lambda of one file. */
  private void replace(Path folder, Path file, byte[] bytes) {
    ClassReader reader = new ClassReader(bytes);
    String owner = reader.getClassName();
    ClassWriter writer = new ClassWriter(reader, 0);
    int before = made;
    List<OfRecord> records = new ArrayList<>();
    reader.accept(
        new ClassVisitor(API, writer) {
          @Override
          public MethodVisitor visitMethod(
              int access, String name, String descriptor, String signature, String[] thrown) {
            return new MethodVisitor(
                API, super.visitMethod(access, name, descriptor, signature, thrown)) {
              @Override
              public void visitInvokeDynamicInsn(
                  String method, String type, Handle bootstrap, Object... rest) {
                if (bootstrap.getOwner().equals(RECORDS)) {
                  records.add(new OfRecord(method, type, rest));
                  super.visitMethodInsn(
                      Opcodes.INVOKESTATIC, owner, "plain$" + method, type, false);
                  return;
                }
                if (!bootstrap.getOwner().equals(FACTORY)) {
                  super.visitInvokeDynamicInsn(method, type, bootstrap, rest);
                  return;
                }
                try {
                  if (!bootstrap.getName().equals("metafactory")) {
                    throw new LeftAlone("it is of several kinds");
                  }
                  Lambda lambda =
                      new Lambda(
                          owner + "$$" + (made + 1 - before),
                          Type.getMethodType(type),
                          method,
                          (Type) rest[0],
                          (Handle) rest[1],
                          (Type) rest[2]);
                  byte[] own = write(owner, lambda);
                  written.put(folder.resolve(lambda.name() + ".class"), own);
                  made++;
                  String made = lambda.name();
                  super.visitMethodInsn(Opcodes.INVOKESTATIC, made, "of", type, false);
                } catch (LeftAlone e) {
                  left++;
                  super.visitInvokeDynamicInsn(method, type, bootstrap, rest);
                }
              }
            };
          }

          @Override
          public void visitEnd() {
            for (OfRecord one : records) {
              one.write(cv, Type.getObjectType(owner));
            }
            super.visitEnd();
          }
        },
        0);
    if (made > before || !records.isEmpty()) {
      written.put(file, writer.toByteArray());
    }
  }

  private byte[] write(String owner, Lambda lambda) {
    Type[] held = lambda.taken().getArgumentTypes();
    Type kind = lambda.taken().getReturnType();
    reach(owner, kind.getInternalName());
    ClassWriter writer = new ClassWriter(ClassWriter.COMPUTE_MAXS);
    int access = Opcodes.ACC_FINAL | Opcodes.ACC_SUPER | Opcodes.ACC_SYNTHETIC;
    String[] kinds = {kind.getInternalName()};
    writer.visit(Opcodes.V17, access, lambda.name(), null, "java/lang/Object", kinds);
    for (int i = 0; i < held.length; i++) {
      int field = Opcodes.ACC_PRIVATE | Opcodes.ACC_FINAL;
      writer.visitField(field, "v" + i, held[i].getDescriptor(), null, null).visitEnd();
    }
    constructor(writer, lambda.name(), held);
    factory(writer, lambda, held);
    body(writer, owner, lambda, held);
    writer.visitEnd();
    return writer.toByteArray();
  }

  private static void constructor(ClassWriter writer, String name, Type[] held) {
    String descriptor = Type.getMethodDescriptor(Type.VOID_TYPE, held);
    MethodVisitor code = writer.visitMethod(Opcodes.ACC_PRIVATE, "<init>", descriptor, null, null);
    code.visitCode();
    code.visitVarInsn(Opcodes.ALOAD, 0);
    code.visitMethodInsn(Opcodes.INVOKESPECIAL, "java/lang/Object", "<init>", "()V", false);
    int at = 1;
    for (int i = 0; i < held.length; i++) {
      code.visitVarInsn(Opcodes.ALOAD, 0);
      code.visitVarInsn(held[i].getOpcode(Opcodes.ILOAD), at);
      code.visitFieldInsn(Opcodes.PUTFIELD, name, "v" + i, held[i].getDescriptor());
      at += held[i].getSize();
    }
    code.visitInsn(Opcodes.RETURN);
    code.visitMaxs(0, 0);
    code.visitEnd();
  }

  private static void factory(ClassWriter writer, Lambda lambda, Type[] held) {
    String type = lambda.taken().getDescriptor();
    MethodVisitor code = writer.visitMethod(Opcodes.ACC_STATIC, "of", type, null, null);
    code.visitCode();
    code.visitTypeInsn(Opcodes.NEW, lambda.name());
    code.visitInsn(Opcodes.DUP);
    int at = 0;
    for (Type one : held) {
      code.visitVarInsn(one.getOpcode(Opcodes.ILOAD), at);
      at += one.getSize();
    }
    String descriptor = Type.getMethodDescriptor(Type.VOID_TYPE, held);
    code.visitMethodInsn(Opcodes.INVOKESPECIAL, lambda.name(), "<init>", descriptor, false);
    code.visitInsn(Opcodes.ARETURN);
    code.visitMaxs(0, 0);
    code.visitEnd();
  }

  private void body(ClassWriter writer, String owner, Lambda lambda, Type[] held) {
    Handle by = lambda.by();
    MethodVisitor code =
        writer.visitMethod(
            Opcodes.ACC_PUBLIC, lambda.method(), lambda.erased().getDescriptor(), null, null);
    code.visitCode();
    boolean makes = by.getTag() == Opcodes.H_NEWINVOKESPECIAL;
    if (makes) {
      code.visitTypeInsn(Opcodes.NEW, by.getOwner());
      code.visitInsn(Opcodes.DUP);
    }
    List<Type> wanted = new ArrayList<>();
    if (!makes && by.getTag() != Opcodes.H_INVOKESTATIC) {
      wanted.add(Type.getObjectType(by.getOwner()));
    }
    wanted.addAll(List.of(Type.getArgumentTypes(by.getDesc())));
    int next = 0;
    for (int i = 0; i < held.length; i++) {
      code.visitVarInsn(Opcodes.ALOAD, 0);
      code.visitFieldInsn(Opcodes.GETFIELD, lambda.name(), "v" + i, held[i].getDescriptor());
      turn(code, held[i], wanted.get(next++));
    }
    int at = 1;
    Type[] erased = lambda.erased().getArgumentTypes();
    Type[] exact = lambda.instantiated().getArgumentTypes();
    for (int i = 0; i < erased.length; i++) {
      code.visitVarInsn(erased[i].getOpcode(Opcodes.ILOAD), at);
      at += erased[i].getSize();
      turn(code, erased[i], exact[i]);
      turn(code, exact[i], wanted.get(next++));
    }
    call(code, owner, by);
    Type given = makes ? Type.getObjectType(by.getOwner()) : Type.getReturnType(by.getDesc());
    Type due = lambda.erased().getReturnType();
    if (due.getSort() == Type.VOID) {
      if (given.getSize() > 0) {
        code.visitInsn(given.getSize() == 2 ? Opcodes.POP2 : Opcodes.POP);
      }
    } else {
      turn(code, given, lambda.instantiated().getReturnType());
      turn(code, lambda.instantiated().getReturnType(), due);
    }
    code.visitInsn(due.getOpcode(Opcodes.IRETURN));
    code.visitMaxs(0, 0);
    code.visitEnd();
  }

  private void call(MethodVisitor code, String owner, Handle by) {
    reach(owner, by.getOwner());
    String key = by.getName() + by.getDesc();
    Known in = known.get(by.getOwner());
    Integer access = in == null ? null : in.methods().get(key);
    if (access != null && (access & Opcodes.ACC_PRIVATE) != 0) {
      openTo(by, in, access);
    } else if (access != null && (access & Opcodes.ACC_PROTECTED) != 0) {
      throw new LeftAlone("what it calls is for heirs");
    }
    int operation =
        switch (by.getTag()) {
          case Opcodes.H_INVOKESTATIC -> Opcodes.INVOKESTATIC;
          case Opcodes.H_NEWINVOKESPECIAL -> Opcodes.INVOKESPECIAL;
          case Opcodes.H_INVOKEINTERFACE -> Opcodes.INVOKEINTERFACE;
          case Opcodes.H_INVOKEVIRTUAL -> Opcodes.INVOKEVIRTUAL;
          // A private method of the class itself, now opened.
          case Opcodes.H_INVOKESPECIAL -> privateOnly(access);
          default -> throw new LeftAlone("it reads or writes a field");
        };
    code.visitMethodInsn(
        operation, by.getOwner(), by.getName(), by.getDesc(), by.isInterface());
  }

  private static int privateOnly(Integer access) {
    if (access == null || (access & Opcodes.ACC_PRIVATE) == 0) {
      throw new LeftAlone("it calls what its class overrides");
    }
    return Opcodes.INVOKEVIRTUAL;
  }

  /** A method that is no longer private must not come to override another, nor be overridden. */
  private void openTo(Handle by, Known in, int access) {
    if ((in.access() & Opcodes.ACC_INTERFACE) != 0) {
      throw new LeftAlone("an interface's methods are private or public");
    }
    boolean instance = (access & Opcodes.ACC_STATIC) == 0 && !by.getName().equals("<init>");
    boolean alone =
        (in.access() & Opcodes.ACC_FINAL) != 0
            && Set.of("java/lang/Object", "java/lang/Record", "java/lang/Enum")
                .contains(in.above());
    if (instance && !alone) {
      throw new LeftAlone("its method could meet another of the same name");
    }
    opened.add(by.getOwner() + "." + by.getName() + by.getDesc());
  }

  /** Whether a class in the package of {@code owner} may name another. */
  private void reach(String owner, String other) {
    Known in = known.get(other);
    boolean near =
        owner.lastIndexOf('/') == other.lastIndexOf('/')
            && owner.startsWith(other.substring(0, other.lastIndexOf('/') + 1));
    if (in != null && (in.access() & Opcodes.ACC_PUBLIC) == 0 && !near) {
      throw new LeftAlone("it is of another package");
    }
  }

  private static final Map<String, String> BOXES =
      Map.of(
          "I", "java/lang/Integer",
          "J", "java/lang/Long",
          "D", "java/lang/Double",
          "F", "java/lang/Float",
          "Z", "java/lang/Boolean",
          "C", "java/lang/Character",
          "B", "java/lang/Byte",
          "S", "java/lang/Short");

  /** Turns what lies on the stack from one type into another, as calling a lambda does. */
  private static void turn(MethodVisitor code, Type from, Type to) {
    if (from.equals(to)) {
      return;
    }
    boolean plainFrom = from.getSort() < Type.ARRAY;
    boolean plainTo = to.getSort() < Type.ARRAY;
    if (plainFrom && plainTo) {
      throw new LeftAlone("one number becomes another");
    }
    if (plainFrom) {
      String box = BOXES.get(from.getDescriptor());
      String type = "(" + from.getDescriptor() + ")L" + box + ";";
      code.visitMethodInsn(Opcodes.INVOKESTATIC, box, "valueOf", type, false);
    } else if (plainTo) {
      String box = BOXES.get(to.getDescriptor());
      if (!from.getInternalName().equals(box) && !from.getInternalName().equals("java/lang/Object")) {
        throw new LeftAlone("one number becomes another");
      }
      code.visitTypeInsn(Opcodes.CHECKCAST, box);
      String value = to.getClassName() + "Value";
      code.visitMethodInsn(Opcodes.INVOKEVIRTUAL, box, value, "()" + to.getDescriptor(), false);
    } else if (!to.getInternalName().equals("java/lang/Object")) {
      code.visitTypeInsn(Opcodes.CHECKCAST, to.getInternalName());
    }
  }

  /** Opens the methods of one file that lambdas call. */
  private void open(Path file, byte[] before) {
    byte[] bytes = written.getOrDefault(file, before);
    ClassReader reader = new ClassReader(bytes);
    String owner = reader.getClassName();
    if (opened.stream().noneMatch(o -> o.startsWith(owner + "."))) {
      return;
    }
    ClassWriter writer = new ClassWriter(reader, 0);
    reader.accept(
        new ClassVisitor(API, writer) {
          @Override
          public MethodVisitor visitMethod(
              int access, String name, String descriptor, String signature, String[] thrown) {
            int now =
                opened.contains(owner + "." + name + descriptor)
                    ? access & ~Opcodes.ACC_PRIVATE
                    : access;
            return super.visitMethod(now, name, descriptor, signature, thrown);
          }
        },
        0);
    written.put(file, writer.toByteArray());
  }
}
