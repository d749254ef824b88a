import v8 from "@vitest/coverage-v8";
import type { BaseCoverageProvider, CoverageProvider } from "vitest/node";

type Reading = Parameters<BaseCoverageProvider["readCoverageFiles"]>[0];

/**
 * Coverage as the engine counts it, but what all files of tests have reached is put together at once, and not that of
 * each file with that of all before it; and the code is gone through once, whichever projects have run it.
 */
// biome-ignore lint/style/noDefaultExport: so it is asked for
export default {
  ...v8,
  async getProvider(): Promise<CoverageProvider> {
    const provider = (await v8.getProvider()) as CoverageProvider & BaseCoverageProvider;
    const read = provider.readCoverageFiles.bind(provider);
    provider.readCoverageFiles = async ({ onFileRead, onFinished, onDebug }: Reading) => {
      const reached: unknown[] = [];
      let finish = () => Promise.resolve();
      await read({
        onFileRead: (file: { readonly result: readonly unknown[] }) => void reached.push(...file.result),
        onFinished: async (project, environment) => {
          finish = () => onFinished(project, environment);
        },
        onDebug,
      });
      onFileRead({ result: reached });
      await finish();
    };
    return provider;
  },
};
