package jarwright.web;

import com.sun.net.httpserver.Headers;
import com.sun.net.httpserver.HttpContext;
import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpPrincipal;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.URI;
import java.nio.charset.StandardCharsets;

/** A request without a network. */
final class FuzzedExchange extends HttpExchange {
  private static final InetSocketAddress HERE =
      new InetSocketAddress(InetAddress.getLoopbackAddress(), 8080);

  private final String method;
  private final URI address;
  private final InputStream body;
  private final ByteArrayOutputStream answer = new ByteArrayOutputStream();
  private final Headers asked = new Headers();
  private final Headers answered = new Headers();
  private int status;

  FuzzedExchange(String method, URI address, String body) {
    this.method = method;
    this.address = address;
    this.body = new ByteArrayInputStream(body.getBytes(StandardCharsets.UTF_8));
  }

  @Override
  public Headers getRequestHeaders() {
    return asked;
  }

  @Override
  public Headers getResponseHeaders() {
    return answered;
  }

  @Override
  public URI getRequestURI() {
    return address;
  }

  @Override
  public String getRequestMethod() {
    return method;
  }

  @Override
  public HttpContext getHttpContext() {
    throw new UnsupportedOperationException();
  }

  @Override
  public void close() {}

  @Override
  public InputStream getRequestBody() {
    return body;
  }

  @Override
  public OutputStream getResponseBody() {
    return answer;
  }

  @Override
  public void sendResponseHeaders(int code, long length) {
    status = code;
  }

  @Override
  public InetSocketAddress getRemoteAddress() {
    return HERE;
  }

  @Override
  public int getResponseCode() {
    return status;
  }

  @Override
  public InetSocketAddress getLocalAddress() {
    return HERE;
  }

  @Override
  public String getProtocol() {
    return "HTTP/1.1";
  }

  @Override
  public Object getAttribute(String name) {
    return null;
  }

  @Override
  public void setAttribute(String name, Object value) {}

  @Override
  public void setStreams(InputStream in, OutputStream out) {}

  @Override
  public HttpPrincipal getPrincipal() {
    return null;
  }
}
