import { Route, Switch } from 'wouter'
import { DishPlace } from './bench/dish-place.tsx'
import { Dishes } from './dishes/dishes.tsx'
import { Failure } from './failure.tsx'
import { Sorry } from './sorry.tsx'

export function App() {
  return (
    <Failure>
      <Switch>
        <Route path="/">
          <Dishes />
        </Route>
        {/* One route for all places of a dish, so that going from one to another keeps the dish open. */}
        <Route path="/dishes/:id/*?">
          {({ id, '*': rest }) => {
            const [place, number] = (rest ?? '').split('/')
            return (
              <DishPlace
                key={id}
                id={id}
                place={place === 'revisions' ? 'revisions' : 'bench'}
                revision={place === 'revisions' && number ? Number(number) : undefined}
              />
            )
          }}
        </Route>
        <Route>
          <Sorry title="There is no page at this address." cure="The dishes are all on one page.">
            <a className="do" href="/">
              Go to the dishes
            </a>
          </Sorry>
        </Route>
      </Switch>
    </Failure>
  )
}
