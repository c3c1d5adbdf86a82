import { useDesk, useSaid, useWords } from '#desk'
import { Faults } from '../form/faults.tsx'
import { sentence } from '../form/told.tsx'

/** What was done or went wrong, and what can be pressed about it. It never asks, it only tells. */
export function NoticeLine() {
  const notice = useDesk((desk) => desk.notice)
  const words = useWords()
  const said = useSaid()
  const close = () => useDesk.setState({ notice: undefined })
  return (
    <div className="notice" role="status" hidden={!notice}>
      {notice && (
        <>
          <div>
            <p>{sentence(said(notice.words).text)}</p>
            {notice.problems && <Faults problems={notice.problems} placed />}
          </div>
          <div className="acts">
            {notice.press && (
              <button
                type="button"
                className="press"
                onClick={() => {
                  close()
                  notice.press?.act()
                }}
              >
                {notice.press.words}
              </button>
            )}
            <button type="button" className="press" onClick={close}>
              {words.dismiss}
            </button>
          </div>
        </>
      )}
    </div>
  )
}
