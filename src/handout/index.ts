export * from './closeups';
