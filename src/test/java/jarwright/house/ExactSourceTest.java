package jarwright.house;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;

import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.LiteralTree;
import com.sun.source.tree.PrimitiveTypeTree;
import com.sun.source.tree.Tree;
import com.sun.source.util.JavacTask;
import com.sun.source.util.TreeScanner;
import com.sun.source.util.Trees;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import javax.lang.model.type.TypeKind;
import javax.tools.JavaCompiler;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.Test;

/**
 * Rule 11 where class files no longer show it: a local variable, a cast or a literal of float or
 * double in {@code quantity}, {@code process} or {@code batch}.
 */
class ExactSourceTest {

  @Test
  void exactPackagesHoldNoFloatOrDouble() throws IOException {
    Path base = SourceTree.root().resolve("src/main/java/jarwright");
    List<Path> files =
        ExactnessRules.EXACT.stream()
            .flatMap(name -> SourceTree.javaBelow(base.resolve(name)).stream())
            .toList();
    assertEquals(Set.of(), inexact(files));
  }

  @Test
  void aLocalVariableAndALiteralAreFound() throws IOException {
    Path fixture =
        SourceTree.root().resolve("src/test/java/jarwright/house/fixture/batch/HalfDose.java");
    List<String> lines = SourceTree.lines(fixture);
    int line = 1 + lines.indexOf("    double half = dose / 2.0;");
    Set<String> found = inexact(List.of(fixture));
    assertEquals(true, found.contains("HalfDose.java:" + line + " double"), found::toString);
    assertEquals(true, found.contains("HalfDose.java:" + line + " 2.0"), found::toString);
  }

  /** File, line and text of each float or double, be it a type or a literal. */
  private static Set<String> inexact(List<Path> files) throws IOException {
    Set<String> found = new TreeSet<>();
    if (files.isEmpty()) {
      return found;
    }
    JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
    try (StandardJavaFileManager manager =
        compiler.getStandardFileManager(null, Locale.ROOT, UTF_8)) {
      JavacTask task =
          (JavacTask)
              compiler.getTask(
                  null, manager, null, List.of(), null, manager.getJavaFileObjectsFromPaths(files));
      Trees trees = Trees.instance(task);
      for (CompilationUnitTree unit : task.parse()) {
        unit.accept(new Finder(unit, trees, found), null);
      }
    }
    return found;
  }

  private static final class Finder extends TreeScanner<Void, Void> {
    private final CompilationUnitTree unit;
    private final Trees trees;
    private final Set<String> found;

    Finder(CompilationUnitTree unit, Trees trees, Set<String> found) {
      this.unit = unit;
      this.trees = trees;
      this.found = found;
    }

    @Override
    public Void visitPrimitiveType(PrimitiveTypeTree tree, Void unused) {
      if (tree.getPrimitiveTypeKind() == TypeKind.DOUBLE
          || tree.getPrimitiveTypeKind() == TypeKind.FLOAT) {
        add(tree);
      }
      return super.visitPrimitiveType(tree, null);
    }

    @Override
    public Void visitLiteral(LiteralTree tree, Void unused) {
      if (tree.getKind() == Tree.Kind.DOUBLE_LITERAL || tree.getKind() == Tree.Kind.FLOAT_LITERAL) {
        add(tree);
      }
      return super.visitLiteral(tree, null);
    }

    private void add(Tree tree) {
      long start = trees.getSourcePositions().getStartPosition(unit, tree);
      long line = unit.getLineMap().getLineNumber(start);
      Path name = Path.of(unit.getSourceFile().getName()).getFileName();
      found.add(name + ":" + line + " " + tree);
    }
  }
}
